using ToiletAid.App.Files;

namespace ToiletAid.Acceptance.Tests.Profiles;

public sealed class ProfileRoundTripTests
{
    private static readonly ProfileReader Reader = new(BuiltIn.Questions());
    private static readonly ProfileWriter Writer = new(BuiltIn.Questions());

    [Theory]
    [MemberData(nameof(DemoPeople.Names), MemberType = typeof(DemoPeople))]
    public void What_is_written_is_read_and_written_the_same(string name)
    {
        string once = Write(File.ReadAllBytes(DemoPeople.File(name)));

        Assert.Equal(once, Write(System.Text.Encoding.UTF8.GetBytes(once)));
    }

    [Fact]
    public void Numbers_and_units_stay_as_entered() =>
        Assert.Contains("\"value\": 5.25,\n          \"unit\": \"ft\"", Write(File.ReadAllBytes(DemoPeople.File("t-562-weak-grip"))), StringComparison.Ordinal);

    private static string Write(byte[] bytes)
    {
        using var stream = new MemoryStream();
        Writer.Write(Reader.Read(bytes).Value!, stream);
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }
}
