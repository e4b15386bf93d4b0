using System.Globalization;

namespace ToiletAid.Terminal.Tests.Readers;

/// <summary>Both readers say the first place in both modes. HEARD_RUNS sets how often each is tried.</summary>
public sealed class FirstPlaceHeardTests
{
    private static readonly int Runs = int.TryParse(Environment.GetEnvironmentVariable("HEARD_RUNS"), CultureInfo.InvariantCulture, out int runs) ? runs : 1;

    /// <summary>All that is asked on safety, so that asking for the result brings it at once.</summary>
    private const string Given = "red-flags=none precautions=none conditions=none posture=seated reach-behind=outer-buttock reach-front=groin grasp=whole-hand "
        + "steps=four-or-more feeling=normal bleeding=no skin=intact infection=no";

    [Theory]
    [InlineData(Reader.Yasr, true)]
    [InlineData(Reader.Yasr, false)]
    [InlineData(Reader.Fenrir, true)]
    [InlineData(Reader.Fenrir, false)]
    public void The_first_place_is_heard_in_every_run(string reader, bool isLinear)
    {
        var heard = new List<string>();
        for (int run = 0; run < Runs; run++)
        {
            using var aloud = new Reader(reader, $"assess --depth quick {(isLinear ? "--linear" : "--full-screen")} {Given}");
            var start = aloud.Start(" of ");
            heard.Add(string.Join(' ', aloud.Press(isLinear ? "finish\r" : Keys.Control('R'), "First: ")));
            Assert.True(start.Count > 0);
        }

        int good = heard.Count(IsHeard);
        TestContext.Current.TestOutputHelper?.WriteLine($"{reader}, {(isLinear ? "linear" : "full screen")}: the first place was heard in {good} of {Runs} runs");
        Assert.True(good == Runs, $"{good} of {Runs}; not heard in: {heard.FirstOrDefault(h => !IsHeard(h))}");
    }

    /// <summary>After the word for the result: the name of a kind, before the answer line says it in short.</summary>
    private static bool IsHeard(string said)
    {
        int result = said.IndexOf("Result.", StringComparison.Ordinal), line = said.IndexOf("First: ", StringComparison.Ordinal);
        return result >= 0 && line > result && App.Files.BuiltIn.Aids().Aids.Any(a => said[result..line].Contains($"Result. {a.Name}", StringComparison.Ordinal));
    }
}
