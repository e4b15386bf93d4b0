using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Completions;
using ToiletAid.App.Documents;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.App.Teaching;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Commands;

/// <summary>Explains kinds of aid side by side, and what each would mean for one person.</summary>
internal sealed class ExplainCommand
{
    private readonly Argument<string[]> _words = new("KIND") { Description = "Kinds of aid, such as tongs, at most four; after them a profile, by its file or by the code of the person, to hear what each would mean for that person.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<string> _format = Formats.Option(Formats.Text, Formats.Markdown, Formats.Html);
    private readonly Option<string> _language = new("--language") { Description = $"Language of the document: {string.Join(", ", English.Tags)}.", DefaultValueFactory = _ => English.Tags[0] };
    private readonly Option<string?> _out = new("--out") { HelpName = "FILE", Description = "File to write. Only its owner may read it." };
    private readonly Option<string?> _aids = StockOption.Define();

    private readonly Terminal _terminal;

    private ExplainCommand(Terminal terminal)
    {
        _terminal = terminal;
        _language.AcceptOnlyFromAmong([.. English.Tags]);
        _words.CompletionSources.Add(_ => BuiltIn.Aids().Aids.Select(a => new CompletionItem(a.Id)));
    }

    internal static Command Define(Terminal terminal)
    {
        var explain = new ExplainCommand(terminal);
        var command = new Command("explain", "Explain up to four kinds of aid side by side, for teaching: whom each suits and why, what its design means, what to practise first.")
        {
            explain._words, explain._format, explain._language, explain._out, explain._aids, ClinicOption.Define(),
        };
        command.SetAction(explain.Run);
        return command;
    }

    /// <summary>Explains kinds side by side.</summary>
    /// <param name="terminal">What it talks to.</param>
    /// <param name="knowledge">What advice rests on.</param>
    /// <param name="ids">Kinds of aid.</param>
    /// <param name="path">The profile of a person whom it is about; null for nobody.</param>
    internal static int Run(Terminal terminal, KnowledgeBase knowledge, ImmutableArray<string> ids, string? path)
    {
        if (Fault(knowledge, [.. ids]) is not { } fault)
        {
            return new ExplainCommand(terminal).Explain(knowledge, ids, path, English.Of(English.Tags[0], DocumentData.Load()));
        }

        terminal.Error.WriteLine(fault);
        return ExitCode.WrongUsage;
    }

    private int Run(ParseResult parsed)
    {
        if (OutputFile.Fault(_terminal, parsed.GetValue(_out)) is { } refused)
        {
            _terminal.Error.WriteLine(refused);
            return ExitCode.InputRefused;
        }

        string[] typed = parsed.GetValue(_words)!;
        if (StockOption.Over(BuiltIn.Knowledge(), parsed.GetValue(_aids), _terminal) is not { } knowledge)
        {
            return ExitCode.InputRefused;
        }

        bool hasPerson = typed.Length > 1 && Kind(knowledge, typed[^1]) is null;
        string[] ids = hasPerson ? typed[..^1] : typed;
        if (Fault(knowledge, ids) is { } fault)
        {
            _terminal.Error.WriteLine(fault);
            return ExitCode.WrongUsage;
        }

        ImmutableArray<Aid> kinds = [.. ids.Select(id => Kind(knowledge, id)!)];
        if (hasPerson && LooksLikeKind(typed[^1]))
        {
            _terminal.Error.WriteLine($"{typed[^1]} is neither a kind of aid nor a profile, use a file, a code or {Ids(knowledge)}.");
            return ExitCode.WrongUsage;
        }

        return Explain(knowledge, ids, hasPerson ? typed[^1] : null, English.Of(parsed.GetValue(_language)!, DocumentData.Load()), parsed.GetValue(_format)!, parsed.GetValue(_out));
    }

    private int Explain(KnowledgeBase knowledge, IEnumerable<string> ids, string? path, English english, string format = Formats.Text, string? file = null)
    {
        ImmutableArray<Aid> kinds = [.. ids.Select(id => Kind(knowledge, id)!)];
        int Write(Document document) => DocumentOutput.Write(_terminal, file, DocumentOutput.Text(_terminal, document, format));
        return path is null ? Write(new TeachingDocument(knowledge).Make(kinds, null, english)) : OneProfile.With(_terminal, knowledge, path, profile =>
        {
            using var notice = WorkNotice.Of(_terminal);
            var document = Of(knowledge, kinds, profile, english);
            notice?.Dispose();
            return Write(document);
        });
    }

    /// <summary>The document with what each kind would mean for a person.</summary>
    private static Document Of(KnowledgeBase knowledge, ImmutableArray<Aid> kinds, Profile profile, English english) =>
        new TeachingDocument(knowledge).Make(kinds, (profile, new Advisor(knowledge, AllCores.Advice).Advise(profile.Latest.Answers)), english);

    private static Aid? Kind(KnowledgeBase knowledge, string id) => knowledge.Catalogue.Aids.FirstOrDefault(a => a.Id == id);

    private static string Ids(KnowledgeBase knowledge) => string.Join(", ", knowledge.Catalogue.Aids.Select(a => a.Id));

    private static string? Fault(KnowledgeBase knowledge, string[] ids) =>
        ids.FirstOrDefault(id => Kind(knowledge, id) is null) is { } wrong ? $"{wrong} is not a kind of aid, use one of {Ids(knowledge)}."
        : ids.Length > ToolPages.MostKinds ? $"{ids.Length} kinds are too many to hear beside each other, name at most {ToolPages.MostKinds}."
        : ids.Distinct(StringComparer.Ordinal).Count() < ids.Length ? "A kind is named twice, name each once."
        : null;

    /// <summary>A misspelt kind would otherwise be looked for on the disk.</summary>
    private bool LooksLikeKind(string word) =>
        word.All(c => char.IsAsciiLetterLower(c) || c == '-') && !File.Exists(new ProfileFolder(_terminal.Variable).Find(word));
}
