using System.CommandLine;
using System.CommandLine.Completions;
using ToiletAid.App.Articles;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Stock;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Linear;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Says whether one article is right for the person of a saved profile.</summary>
internal sealed class FitsCommand
{
    private readonly Argument<string> _path = ProfileArgument.One();
    private readonly Argument<string[]> _article = new("ARTICLE")
    {
        Description = "The kind that it resembles, then what is known, such as short-soft length=16 one-hand-load=yes. What matters and is left out is asked.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly Option<string?> _save = new("--save") { HelpName = "FILE", Description = "File of the clinic's own aids to keep the article in, for --aids of other commands." };
    private readonly Option<string?> _aids = StockOption.Define();
    private readonly Option<string> _format = Formats.Option(Formats.Text, Formats.Json);
    private readonly Terminal _terminal;

    private FitsCommand(Terminal terminal)
    {
        _terminal = terminal;
        _article.CompletionSources.Add(_ => BuiltIn.Aids().Aids.Where(ToiletAid.Core.Fitting.ArticleTrait.IsArticle).Select(a => new CompletionItem(a.Id)));
    }

    internal static Command Define(Terminal terminal)
    {
        var fits = new FitsCommand(terminal);
        var command = new Command("fits", "Say whether the article in your hand is right for this person, after as few measurements as that takes.") { fits._path, fits._article, fits._save, fits._format, fits._aids, ClinicOption.Define() };
        command.SetAction(parsed => OneProfile.With(terminal, parsed.GetValue(fits._path)!, parsed.GetValue(fits._aids), (knowledge, profile) => fits.Run(parsed, knowledge, profile)));
        return command;
    }

    private int Run(ParseResult parsed, KnowledgeBase knowledge, Profile profile)
    {
        string[] words = parsed.GetValue(_article) ?? [];
        bool json = parsed.GetValue(_format) == Formats.Json;
        string? save = parsed.GetValue(_save);
        if (save is not null && Path.Exists(save) && new StockReader(BuiltIn.Aids()).ReadFile(save) is { Value: null } bad)
        {
            _terminal.Complain(save, bad.Issues);
            return ExitCode.InputRefused;
        }

        var advisor = new Advisor(knowledge, AllCores.Advice);
        var known = profile.Latest.Answers;
        var advice = advisor.Advise(known);
        var interview = new ArticleInterview(knowledge, advisor, known, advice);
        if (advice.Stops.IsEmpty && (interview.Give(words) ?? (json && interview.Facts is null ? "Name the kind that it resembles, such as short-soft" : null)) is { } fault)
        {
            _terminal.Error.WriteLine(fault + ".");
            return ExitCode.WrongUsage;
        }

        if (json)
        {
            WriteJson(knowledge, profile, advice, interview);
            return save is null || !advice.Stops.IsEmpty ? ExitCode.Good : Save(interview, save, quiet: true);
        }

        if (!advice.Stops.IsEmpty)
        {
            _terminal.Results.Lines(AdviceText.Stop(advice.Stops));
            return ExitCode.Good;
        }

        // Whoever gives what they measured and cannot be asked wants the verdict, as far as it goes.
        bool asks = _terminal.InputIsTerminal || words.All(w => !w.Contains('=', StringComparison.Ordinal));
        return asks ? Ask(knowledge, interview, save ?? (_terminal.InputIsTerminal ? parsed.GetValue(_aids) : null)) : Tell(knowledge, interview, save);
    }

    private int Ask(KnowledgeBase knowledge, ArticleInterview interview, string? save)
    {
        var lines = _terminal.Dialogue;
        var input = _terminal.Lines();
        if (!interview.IsDone)
        {
            lines.Line("Is this article right? Have a ruler, a kitchen scale and a luggage scale at hand. Type help at any question.");
        }

        var end = new MeasureDialogue(interview, lines, input, _terminal.InputIsTerminal).Run();
        if (end == InterviewEnd.Quit || interview.Result() is not { } result)
        {
            lines.Line(end == InterviewEnd.Quit ? "Nothing was saved." : $"Input ended at question {interview.Position + 1}. Nothing was saved.");
            return end == InterviewEnd.Quit ? ExitCode.Good : ExitCode.InputRefused;
        }

        _terminal.Results.Lines([.. new FitsText(knowledge).Lines(result), .. ClinicText.Used(knowledge)]);
        if (save is null || interview.Count == 0)
        {
            return ExitCode.Good;
        }

        if (_terminal.InputIsTerminal && lines.Ask($"K keeps it in {save}, Enter alone does not: ", input, true)?.Trim().Equals("k", StringComparison.OrdinalIgnoreCase) != true)
        {
            lines.Line("Nothing was saved.");
            return ExitCode.Good;
        }

        return Save(interview, save, quiet: false);
    }

    private int Tell(KnowledgeBase knowledge, ArticleInterview interview, string? save)
    {
        _terminal.Results.Lines([.. new FitsText(knowledge).Lines(interview.Result()!), .. ClinicText.Used(knowledge)]);
        return save is null ? ExitCode.Good : Save(interview, save, quiet: false);
    }

    /// <summary>Keeps an article in a file of the clinic's own aids.</summary>
    /// <param name="interview">The article, its kind known.</param>
    /// <param name="path">The file.</param>
    /// <param name="day">Day of measuring.</param>
    /// <returns>True when it was kept, and what came of it in one sentence or two.</returns>
    internal static (bool Kept, string Said) Keep(ArticleInterview interview, string path, DateOnly day)
    {
        try
        {
            if (Path.Exists(path) && new StockReader(BuiltIn.Aids()).ReadFile(path) is { Value: null } bad)
            {
                return (false, $"{bad.Issues[0].Sentence(path)}. Nothing was saved.");
            }

            var (id, issues) = ArticleStock.Keep(path, interview.Facts!, day);
            return issues.Count == 0 ? (true, $"Saved {id} in {path}. Use it with --aids {path}.") : (false, $"{issues[0].Sentence(path)}. Nothing was saved.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return (false, $"{(path.Length == 0 ? "The file" : path)} could not be written, {FileFault.Reason(e)}. Nothing was saved.");
        }
    }

    private int Save(ArticleInterview interview, string save, bool quiet)
    {
        var (kept, said) = Keep(interview, save, _terminal.Today);
        if (!kept)
        {
            _terminal.Error.WriteLine(said);
        }
        else if (!quiet)
        {
            _terminal.Dialogue.Line(said);
        }

        return kept ? ExitCode.Good : ExitCode.InputRefused;
    }

    private void WriteJson(KnowledgeBase knowledge, Profile profile, Advice advice, ArticleInterview interview) => _terminal.Output.WriteLine(JsonText.Of(JsonText.Indented, json =>
    {
        json.WriteStartObject();
        json.WriteString("person", profile.Person);
        ClinicText.Write(json, knowledge);
        AdviceJson.Stop(json, advice.Stops);
        if (advice.Stops.IsEmpty)
        {
            new FitsText(knowledge).Write(json, interview.Result()!);
        }

        json.WriteEndObject();
    }));
}
