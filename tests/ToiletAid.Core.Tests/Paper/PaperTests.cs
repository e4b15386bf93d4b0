using System.Collections.Immutable;
using CsCheck;
using ToiletAid.App.Files;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Paper;
using ToiletAid.Core.Tests.Hand;

namespace ToiletAid.Core.Tests.Paper;

public sealed class PaperTests
{
    private static readonly PaperCoefficients Numbers = BuiltInSupplies.Load().Paper;

    private static readonly Gen<PaperUse> Uses = Gen.Select(Gen.Enum<PaperHold>(), Gen.Int[1, 10], Gen.Int[0, 3], Gen.Double[0.05, 0.25]).Select(
        (hold, sheets, folds, girth) => new PaperUse(hold, sheets, folds, hold == PaperHold.Pad ? null : Exactly(girth)));

    private static Sourced Exactly(double x) => new(x, x, x, Basis.Decision, "test");

    /// <summary>Folding in half: common practice.</summary>
    [Theory]
    [InlineData(4, 2, 1, 4)]
    [InlineData(8, 2, 2, 4)]
    [InlineData(4, 0, 4, 1)]
    [InlineData(6, 1, 3, 2)]
    [InlineData(3, 1, 1.5, 2)]
    public void A_folded_strip_is_as_long_and_thick_as_everyone_knows(int sheets, int folds, double sheetsLong, int layers)
    {
        var sheet = new PaperSheet(0.114, 0.1, 2);
        var strip = FoldedStrip.Of(sheets, folds, sheet);

        Assert.Equal(sheetsLong * sheet.LengthMetres, strip.LengthMetres, 1e-12);
        Assert.Equal(layers, strip.Layers);
        Assert.Equal(2 * layers, strip.Plies);
    }

    [Fact]
    public void Folding_moves_paper_and_loses_none() =>
        Gen.Select(Gen.Int[1, 60], Gen.Int[0, 6]).Sample((sheets, folds) =>
        {
            var strip = FoldedStrip.Of(sheets, folds, Numbers.Sheet);
            Assert.Equal(sheets * Numbers.Sheet.LengthMetres, strip.LengthMetres * strip.Layers, 1e-12);
        });

    /// <summary>JIS P 4501: rolls are 114 mm wide; European rolls 97 to 100 mm.</summary>
    [Fact]
    public void The_usual_sheet_is_within_the_published_widths()
    {
        Assert.InRange(Numbers.Sheet.WidthMetres, 0.097, 0.114);
        Assert.Equal((0.114, 2), (Numbers.Sheet.LengthMetres, Numbers.Sheet.Plies));
    }

    [Fact]
    public void Eight_sheets_folded_twice_go_two_and_a_half_times_round_a_narrow_head()
    {
        var cover = PaperCover.Of(FoldedStrip.Of(8, 2, Numbers.Sheet), new(PaperHold.Wrap, 8, 2, Exactly(0.09)), Numbers);

        // 2 · 11.4 cm / 9 cm.
        Assert.Equal(2.533, cover.Wraps!.Value, 0.001);
        Assert.Equal((8, true, 1.0), (cover.FaceLayers, cover.Holds, cover.Coverage));
    }

    [Theory]
    [InlineData(0.114, true)]
    [InlineData(0.115, false)]
    [InlineData(0.150, false)]
    public void Wrapped_paper_holds_when_it_overlaps_by_half_a_turn(double girth, bool holds)
    {
        // Three sheets folded once are 17.1 cm long: one and a half times 11.4 cm.
        var cover = PaperCover.Of(FoldedStrip.Of(3, 1, Numbers.Sheet), new(PaperHold.Wrap, 3, 1, Exactly(girth)), Numbers);
        Assert.Equal((holds, 2, 1.0), (cover.Holds, cover.FaceLayers, cover.Coverage));
    }

    [Fact]
    public void A_strip_shorter_than_the_head_leaves_part_of_it_bare()
    {
        var cover = PaperCover.Of(FoldedStrip.Of(1, 0, Numbers.Sheet), new(PaperHold.Wrap, 1, 0, Exactly(0.228)), Numbers);
        Assert.Equal((false, 0), (cover.Holds, cover.FaceLayers));
        Assert.Equal(0.5, cover.Coverage, 1e-12);
    }

    [Theory]
    [InlineData(0.074, true)]
    [InlineData(0.075, false)]
    public void Tucked_paper_needs_both_ends(double girth, bool holds)
    {
        // 11.4 cm less twice 2 cm.
        var use = new PaperUse(PaperHold.Tuck, 2, 1, Exactly(girth));
        Assert.Equal(holds, PaperCover.Of(FoldedStrip.Of(2, 1, Numbers.Sheet), use, Numbers).Holds);
    }

    /// <summary>Six to nine sheets for one bowel cleaning are told in the trade (low grade); a formed stool should land there.</summary>
    [Fact]
    public void A_formed_stool_takes_six_to_nine_sheets_in_the_hand() =>
        Assert.InRange(PaperNeed.Of(HandData.Aid("by-hand").Paper!, 4, 1, Numbers).SheetsPerClean, 6, 9);

    /// <summary>Softer stool takes more passes, which is an estimate; no more than twice the most that is told of a formed one.</summary>
    [Theory]
    [InlineData(5, 12)]
    [InlineData(6, 16)]
    public void A_soft_stool_takes_at_most_twice_as_many_as_are_told(int type, int sheets)
    {
        int found = PaperNeed.Of(HandData.Aid("by-hand").Paper!, type, 1, Numbers).SheetsPerClean;

        Assert.Equal(sheets, found);
        Assert.InRange(found, 6, 2 * 9);
    }

    [Fact]
    public void A_month_is_worked_out_from_loads_and_cleans()
    {
        var need = PaperNeed.Of(new(PaperHold.Pad, 4, 2), 4, 2, Numbers);

        // 4 sheets, 2 loads, 2 cleans a day, 30.4375 days: 487 sheets, 2.435 rolls of 200.
        Assert.Equal((8, true), (need.SheetsPerClean, need.IsEnough));
        Assert.Equal(487, need.SheetsPerMonth, 1e-9);
        Assert.Equal(2.435, need.RollsPerMonth, 1e-9);
        Assert.Equal(12, need.ToPrepare(3));
        Assert.Equal(2, need.ToPrepare(0.4));
        Assert.Equal(0, need.ToPrepare(0));
    }

    [Fact]
    public void A_liquid_stool_gets_a_pad_folded_once_more_and_as_long()
    {
        var formed = PaperNeed.Of(new(PaperHold.Pad, 4, 2), 4, 1, Numbers);
        var liquid = PaperNeed.Of(new(PaperHold.Pad, 4, 2), 7, 1, Numbers);

        Assert.Equal((8, 3), (liquid.Strip.Sheets, liquid.Strip.Folds));
        Assert.Equal(formed.Strip.LengthMetres, liquid.Strip.LengthMetres, 1e-12);
        Assert.True(liquid.LoadsPerClean > formed.LoadsPerClean);
    }

    [Fact]
    public void More_sheets_never_reduce_coverage_layers_or_hold() =>
        Gen.Select(Uses, Gen.Int[1, 60], Gen.Int[0, 20], Gen.Int[0, 4]).Sample(
            (use, sheets, more, folds) =>
            {
                var few = PaperCover.Of(FoldedStrip.Of(sheets, folds, Numbers.Sheet), use, Numbers);
                var many = PaperCover.Of(FoldedStrip.Of(sheets + more, folds, Numbers.Sheet), use, Numbers);
                Assert.InRange(few.Coverage, 0, many.Coverage);
                Assert.True(many.Coverage <= 1);
                Assert.True(many.FaceLayers >= few.FaceLayers);
                Assert.True(many.Holds || !few.Holds);
            },
            iter: 3_000);

    [Fact]
    public void Softer_stool_and_more_cleans_never_need_less_paper() =>
        Gen.Select(Uses, Gen.Int[1, 7], Gen.Int[1, 7], Gen.Double[0, 12], Gen.Double[0, 12]).Sample(
            (use, a, b, c, d) =>
            {
                var less = PaperNeed.Of(use, Math.Min(a, b), Math.Min(c, d), Numbers);
                var more = PaperNeed.Of(use, Math.Max(a, b), Math.Max(c, d), Numbers);
                Assert.True(more.SheetsPerMonth >= less.SheetsPerMonth);
                Assert.True(more.SheetsPerClean >= less.SheetsPerClean);
                Assert.True(less.Strip.Sheets >= use.Sheets);
            },
            iter: 2_000);

    [Fact]
    public void Enough_paper_is_no_more_than_enough() =>
        Gen.Select(Uses, Gen.Int[1, 7]).Sample(
            (use, type) =>
            {
                var need = PaperNeed.Of(use, type, 1, Numbers);
                var stool = Numbers.For(type);
                Assert.Equal(need.IsEnough, need.Cover.Holds && need.Cover.FaceLayers >= stool.Layers);
                bool startsLonger = need.Strip.Sheets <= use.Sheets << (need.Strip.Folds - use.Folds);
                if (!startsLonger)
                {
                    var shorter = PaperCover.Of(FoldedStrip.Of(need.Strip.Sheets - 1, need.Strip.Folds, Numbers.Sheet), use, Numbers);
                    Assert.False(shorter.Holds && shorter.FaceLayers >= stool.Layers);
                }
            },
            iter: 2_000);

    [Fact]
    public void Every_paper_aid_of_the_catalogue_finds_enough_paper_for_every_stool()
    {
        foreach (var aid in HandData.Aids.Where(a => a.Paper is not null))
        {
            foreach (int type in Enumerable.Range(1, 7))
            {
                var need = PaperNeed.Of(aid.Paper!, type, 2, Numbers);
                Assert.True(need.IsEnough, $"{aid.Id}, type {type}");
                Assert.InRange(need.Strip.Sheets, 4, 24);
            }
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(8)]
    public void There_is_no_stool_type_beyond_seven(int type) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PaperNeed.Of(new(PaperHold.Pad, 4, 2), type, 1, Numbers));

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Cleans_a_day_below_nought_are_refused(double cleans) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PaperNeed.Of(new(PaperHold.Pad, 4, 2), 4, cleans, Numbers));

    [Fact]
    public void A_stool_table_with_a_gap_is_refused()
    {
        var table = BuiltInSupplies.Load().Numbers;
        ImmutableArray<StoolPaper> six = [.. Enumerable.Range(1, 6).Select(t => new StoolPaper(t, 4, 2))];
        Assert.Throws<ArgumentException>(() => new PaperCoefficients(table, six));
        Assert.NotNull(new PaperCoefficients(table, six.Add(new(7, 8, 4))));
    }
}
