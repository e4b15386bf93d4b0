using System.Collections.Immutable;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Batch;

/// <summary>What is to be different afterwards: other aids, other priorities, or both.</summary>
/// <param name="After">Knowledge afterwards.</param>
/// <param name="Priorities">Order for everybody, or null to leave each person's own.</param>
/// <param name="Said">The change in words.</param>
internal sealed record WhatIfChange(KnowledgeBase After, AnswerValue.Order? Priorities, string Said)
{
    private const string AidsPrefix = "aids=";
    private const string PrioritiesPrefix = "priorities=";

    /// <summary>The answers afterwards.</summary>
    internal Answers Apply(Answers answers) =>
        Priorities is null ? answers : answers.With(QuestionIds.Priorities, new(Priorities, HowObtained.Reported));

    /// <summary>Reads the options; null after what is wrong was told, with the exit code.</summary>
    internal static (WhatIfChange? Change, int Code) Of(string[] options, KnowledgeBase knowledge, Terminal terminal)
    {
        var change = new WhatIfChange(knowledge, null, string.Empty);
        foreach (string option in options)
        {
            if (option.StartsWith(AidsPrefix, StringComparison.Ordinal))
            {
                string file = option[AidsPrefix.Length..];
                if (StockOption.Over(change.After, file, terminal) is not { } after)
                {
                    return (null, ExitCode.InputRefused);
                }

                change = change.Also(change with { After = after }, $"aids of {Path.GetFileName(file)}");
            }
            else if (option.StartsWith(PrioritiesPrefix, StringComparison.Ordinal))
            {
                string text = option[PrioritiesPrefix.Length..];
                var (order, fault) = Order(knowledge.Questions[QuestionIds.Priorities], text);
                if (order is null)
                {
                    terminal.Error.WriteLine(fault);
                    return (null, ExitCode.WrongUsage);
                }

                change = change.Also(change with { Priorities = order }, "priorities " + string.Join(", then ", order.Groups.Select(g => string.Join(" and ", g))));
            }
            else
            {
                terminal.Error.WriteLine($"{option} is not a change, use aids=FILE or priorities=skin,reach. Type toiletaid --help for the commands.");
                return (null, ExitCode.WrongUsage);
            }
        }

        return (knowledge.Clinic is { } clinic ? change with { Said = $"{change.Said}, both with this clinic's own values, checksum {clinic.Checksum}" } : change, ExitCode.Good);
    }

    /// <summary>Commas separate places, equals signs join criteria that share one.</summary>
    private static (AnswerValue.Order? Order, string Fault) Order(Question question, string text)
    {
        var groups = text.Split(',').Select(g => g.Split('=').Select(c => c.Trim()).ToImmutableArray()).ToImmutableArray();
        string? unknown = groups.SelectMany(g => g).FirstOrDefault(c => question.FindOption(c) is null);
        if (unknown is not null)
        {
            return (null, $"{(unknown.Length == 0 ? "Nothing" : unknown)} is not a priority, use {string.Join(", ", question.Options.Select(o => o.Id))}. Type toiletaid --help for the commands.");
        }

        string? twice = groups.SelectMany(g => g).GroupBy(c => c, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1)?.Key;
        return twice is null ? (new(groups), string.Empty) : (null, $"{twice} appears twice in the priorities, give it one place.");
    }

    private WhatIfChange Also(WhatIfChange next, string said) => next with { Said = Said.Length == 0 ? said : $"{Said}, and {said}" };
}
