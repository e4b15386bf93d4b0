using System.Collections.Immutable;
using System.Text.Json;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>Writes the trials of a visit: what was not noted is left out, so that the same trial gives the same bytes.</summary>
internal static class TrialWriter
{
    /// <summary>Writes the member trials, or nothing when there is none.</summary>
    internal static void Write(Utf8JsonWriter json, ImmutableArray<Trial> trials)
    {
        if (trials.IsEmpty)
        {
            return;
        }

        json.WriteStartArray("trials");
        foreach (var trial in trials)
        {
            json.WriteStartObject();
            Plan(json, trial.Plan);
            Predicted(json, trial.Predicted);
            Text(json, "before", trial.Before);
            Text(json, "goal", trial.Goal);
            json.WriteStartArray("runs");
            foreach (var run in trial.Runs)
            {
                Run(json, run);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Plan(Utf8JsonWriter json, TriedPlan plan)
    {
        json.WriteStartObject("plan");
        json.WriteString("aid", plan.Aid);
        json.WriteStrings("addOns", plan.AddOns);
        Text(json, "companion", plan.Companion);
        Text(json, "approach", plan.Approach is { } approach ? Words.Of(approach) : null);
        json.WriteString("posture", Words.Of(plan.Posture));
        Text(json, "variant", plan.Variant);
        json.WriteEndObject();
    }

    private static void Predicted(Utf8JsonWriter json, TrialPrediction? predicted)
    {
        if (predicted is null)
        {
            return;
        }

        json.WriteStartObject("predicted");
        foreach (var criterion in Enum.GetValues<Criterion>())
        {
            json.WriteNumber(Words.Of(criterion), predicted.Criteria[(int)criterion]);
        }

        json.WriteEndObject();
    }

    private static void Run(Utf8JsonWriter json, TrialRun run)
    {
        json.WriteStartObject();
        json.WriteString("kind", Words.Of(run.Kind));
        Text(json, "level", run.Level);
        Text(json, "cleanliness", run.Cleanliness);
        if (run.Minutes is { } minutes)
        {
            json.WriteNumber("minutes", minutes);
        }

        if (run.Effort is { } effort)
        {
            json.WriteNumber("effort", effort);
        }

        json.WriteStrings("problems", run.Problems);
        json.WriteEndObject();
    }

    private static void Text(Utf8JsonWriter json, string name, string? text)
    {
        if (text is not null)
        {
            json.WriteString(name, text);
        }
    }
}
