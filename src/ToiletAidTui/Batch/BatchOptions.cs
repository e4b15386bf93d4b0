using System.CommandLine;
using ToiletAid.Core.Advising;
using ToiletAidTui.Options;

namespace ToiletAidTui.Batch;

/// <summary>Options of the commands that work through many profiles.</summary>
internal sealed class BatchOptions
{
    private const int ReachesKept = 1024;

    private const int MostJobs = 1024;
    private const int MostSamples = 1_000_000;
    private const int MostDraws = 4096;

    private readonly Option<int?> _jobs = new("--jobs") { Description = "Profiles worked on at once. One per core if left out." };
    private readonly Option<ulong> _seed = Seed();
    private readonly Option<int> _samples = new("--samples") { Description = "Weightings drawn for each order of priorities.", DefaultValueFactory = _ => new AdviceSettings().WeightDraws };
    private readonly Option<int> _draws = new("--draws") { Description = "Simulated people for each profile. They take most of the time.", DefaultValueFactory = _ => new AdviceSettings().ValueDraws };
    private readonly Option<long> _resume = new("--resume") { Description = "Profiles to skip at the start, as told when a run was stopped." };
    private readonly Option<string?> _rejects = new("--rejects") { HelpName = "FILE", Description = "File for the profiles that are refused, one per line with the reason." };
    private readonly Option<bool> _quiet = new("--quiet") { Description = "Say nothing about progress." };

    internal BatchOptions()
    {
        _jobs.Validators.Add(r => NumberRange.Check(r, 1, MostJobs, "--jobs"));
        _samples.Validators.Add(r => NumberRange.Check(r, 1, MostSamples, "--samples"));
        _draws.Validators.Add(r => NumberRange.Check(r, 1, MostDraws, "--draws"));
        _resume.Validators.Add(r => NumberRange.Check(r, 0, long.MaxValue, "--resume"));
    }

    /// <summary>--seed, with the seed that advice is computed with elsewhere too.</summary>
    internal static Option<ulong> Seed() => new("--seed") { Description = "Seed of every draw. The same seed gives the same bytes.", DefaultValueFactory = _ => new AdviceSettings().Seed };

    internal void AddTo(Command command)
    {
        foreach (Option option in (Option[])[_jobs, _seed, _samples, _draws, _resume, _rejects, _quiet])
        {
            command.Options.Add(option);
        }
    }

    internal BatchSettings Of(ParseResult parsed)
    {
        int jobs = parsed.GetValue(_jobs) ?? Environment.ProcessorCount;

        // Many people give the same few answers about reach, above all in quick depth, and reach is the most expensive part of the work. All jobs
        // together keep as much.
        int kept = Math.Max(ReachesKept / jobs, 1);
        var advice = new AdviceSettings { Seed = parsed.GetValue(_seed), WeightDraws = parsed.GetValue(_samples), ValueDraws = parsed.GetValue(_draws), ReachesKept = kept, WeightingsKept = 4 };
        return new(jobs, parsed.GetValue(_resume), parsed.GetValue(_rejects), parsed.GetValue(_quiet), advice);
    }
}
