using BenchmarkDotNet.Attributes;
using ToiletAid.App.Files;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.Benchmarks;

/// <summary>One person's reach in all postures and by all approaches.</summary>
[MemoryDiagnoser]
public class ReachBenchmarks
{
    private static readonly BodyTables Tables = BodyTablesReader.ReadBuiltIn();

    private static readonly ReachPerson Measured = new()
    {
        Sex = Sex.Female,
        AgeYears = 72,
        Stature = new ReachInput(1.63),
        Mass = new ReachInput(78),
        Lean = Lean.Both,
    };

    private static readonly ReachPerson Answered = Measured with { Behind = LandmarkBehind.OuterButtock, Front = LandmarkFront.Groin };

    [Benchmark(Description = "middle person, no landmark answers")]
    public ReachReport Middle() => ReachAnalysis.Analyse(Tables, Measured, new ReachSettings { Draws = 0 });

    [Benchmark(Description = "middle person, landmark answers inverted")]
    public ReachReport Landmarks() => ReachAnalysis.Analyse(Tables, Answered, new ReachSettings { Draws = 0 });

    [Benchmark(Description = "middle person with limiting joints and straight aid")]
    public double Detail() => ReachAnalysis.Analyse(Tables, Answered, new ReachSettings { Draws = 0 }).Needs.Sum(n => n.StraightExtra + n.Limiting.Length);

    [Benchmark(Description = "64 draws")]
    public ReachReport Draws64() => ReachAnalysis.Analyse(Tables, Answered, new ReachSettings { Draws = 64 });

    [Benchmark(Description = "64 draws, seated only")]
    public ReachReport Seated64() =>
        ReachAnalysis.Analyse(Tables, Answered, new ReachSettings { Draws = 64, Postures = [Posture.Seated] });
}
