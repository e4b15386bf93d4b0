using ToiletAid.App.Files;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.Core.Tests.Catalogue;

public sealed class CatalogueDataTests
{
    private static readonly AidCatalogue Aids = BuiltIn.Aids();

    [Fact]
    public void Ids_never_change_silently()
    {
        Assert.Equal(
            [
                "by-hand", "long-clamp", "short-soft", "paddle-lock", "tongs", "loop-wrap", "squeeze-wash", "spray-wash", "hose-wash",
                "seat-wash", "seat-wash-dry", "wipe-moist", "helper-wipe",
            ],
            Aids.Aids.Select(a => a.Id));
        Assert.Equal(
            ["hand-cuff", "built-up-handle", "raised-seat-with-cut-out", "footstool", "fixed-rail", "skin-mirror", "prepared-paper"],
            Aids.AddOns.Select(a => a.Id));
    }

    [Fact]
    public void Add_ons_and_companions_that_are_named_exist()
    {
        Assert.All(Aids.Aids.SelectMany(a => a.AddOns), id => Assert.Contains(id, Aids.AddOns.Select(o => o.Id)));
        Assert.All(Aids.Aids.SelectMany(a => a.Companions), id => Assert.Contains(id, Aids.Aids.Select(o => o.Id)));
    }

    [Fact]
    public void The_clamp_handle_is_the_longest_and_the_paddle_lies_between_it_and_the_short_holder()
    {
        // The character of the kinds, common practice: longest reach; mid length; short.
        Assert.True(Length("long-clamp") > Length("paddle-lock"));
        Assert.True(Length("paddle-lock") > Length("short-soft"));
        Assert.Equal("long-clamp", Aids.Aids.Where(a => a.Reach == ReachKind.Handle).MaxBy(a => a.Length!.Value)!.Id);
    }

    [Fact]
    public void The_wide_head_is_the_widest_and_only_it_is_soft()
    {
        Assert.Equal("short-soft", Aids.Aids.MaxBy(a => a.TipWidth?.Value ?? 0)!.Id);
        Assert.Equal(["short-soft"], Aids.Aids.Where(a => a.Tip == Tip.Soft).Select(a => a.Id));
    }

    private static double Length(string id) => Aids.Aids.Single(a => a.Id == id).Length!.Value;
}
