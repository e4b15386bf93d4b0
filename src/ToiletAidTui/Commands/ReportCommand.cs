using System.CommandLine;
using ToiletAid.App.Documents;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Writes a document about one saved profile: the clinic note, a sheet to leave behind, or data for the record system.</summary>
internal sealed class ReportCommand
{
    private const string Note = "note";
    private const string Sheet = "sheet";
    private const string Record = "record";
    private const string Person = "person";
    private const string Helper = "helper";
    private const string InWords = "words";
    private const string InPictures = "pictures";

    private readonly Argument<string> _path = ProfileArgument.One();
    private readonly Option<string> _kind = Choice("--kind", "Which document", Note, Sheet, Record);
    private readonly Option<string> _for = Choice("--for", "For whom a sheet is", Person, Helper);
    private readonly Option<string?> _sheet = new("--sheet")
    {
        Description = "Form of the person's sheet: words, or pictures with few words for somebody who does not read. If left out, pictures for a person who follows one step at a time.",
    };

    private readonly Option<string> _language = Choice("--language", "Language of the document", [.. English.Tags]);
    private readonly Option<string?> _format = new("--format") { Description = "Form of the output: text, markdown or html for a note or a sheet, json for a record." };
    private readonly Option<int?> _plan = new("--plan") { Description = "Place of the plan that was chosen. The first if left out." };
    private readonly Option<string?> _out = new("--out") { HelpName = "FILE", Description = "File to write. Only its owner may read it." };

    private readonly Option<string?> _aids = StockOption.Define();

    private readonly Terminal _terminal;
    private readonly KnowledgeBase? _loaded;

    private ReportCommand(Terminal terminal, KnowledgeBase? loaded)
    {
        _loaded = loaded;
        _terminal = terminal;
        _sheet.AcceptOnlyFromAmong(InWords, InPictures);
        _format.AcceptOnlyFromAmong(Formats.Text, Formats.Markdown, Formats.Html, Formats.Json);
    }

    /// <summary>The command.</summary>
    /// <param name="terminal">What it talks to.</param>
    /// <param name="loaded">What advice rests on, where it is loaded already.</param>
    internal static Command Define(Terminal terminal, KnowledgeBase? loaded = null)
    {
        var report = new ReportCommand(terminal, loaded);
        var command = new Command("report", "Write the clinic note, a sheet to leave behind, or data for the record system.")
        {
            report._path, report._kind, report._for, report._sheet, report._format, report._plan, report._language, report._out, report._aids, ClinicOption.Define(),
        };
        command.SetAction(report.Run);
        return command;
    }

    /// <summary>Writes or says a document about a profile, with what was typed for each option.</summary>
    internal static int Run(Terminal terminal, KnowledgeBase knowledge, string path, IEnumerable<KeyValuePair<string, string>> typed)
    {
        terminal.Named = [path];
        // An option and its value in one word: a value may begin with a dash.
        var parsed = Define(terminal, knowledge).Parse([path, .. typed.Select(t => $"{t.Key}={t.Value}")]);
        if (parsed.Errors.Select(UsageFault.Sentence).FirstOrDefault() is { } fault)
        {
            terminal.Error.WriteLine(fault);
            return ExitCode.WrongUsage;
        }

        return parsed.Invoke(new() { Output = terminal.Output, Error = terminal.Error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
    }

    private static Option<string> Choice(string name, string description, params string[] choices)
    {
        var option = new Option<string>(name) { Description = $"{description}: {string.Join(", ", choices)}.", DefaultValueFactory = _ => choices[0] };
        option.AcceptOnlyFromAmong(choices);
        return option;
    }

    private int Run(ParseResult parsed)
    {
        string kind = parsed.GetValue(_kind)!;
        string format = parsed.GetValue(_format) ?? (kind == Record ? Formats.Json : Formats.Text);
        if ((kind == Record) != (format == Formats.Json))
        {
            _terminal.Error.WriteLine(kind == Record ? "A record comes only as json, leave out --format." : $"A {kind} does not come as json, use text, markdown or html.");
            return ExitCode.WrongUsage;
        }

        if (parsed.GetValue(_sheet) is not null && (kind != Sheet || parsed.GetValue(_for) == Helper))
        {
            _terminal.Error.WriteLine("--sheet is for the person's sheet, use --kind sheet without --for helper.");
            return ExitCode.WrongUsage;
        }

        if (OutputFile.Fault(_terminal, parsed.GetValue(_out)) is { } refused)
        {
            _terminal.Error.WriteLine(refused);
            return ExitCode.InputRefused;
        }

        return _loaded is { } loaded ? OneProfile.With(_terminal, loaded, parsed.GetValue(_path)!, profile => Write(parsed, loaded, profile, kind, format))
            : OneProfile.With(_terminal, parsed.GetValue(_path)!, parsed.GetValue(_aids), (knowledge, profile) => Write(parsed, knowledge, profile, kind, format));
    }

    private int Write(ParseResult parsed, KnowledgeBase knowledge, Profile profile, string kind, string format)
    {
        using var notice = WorkNotice.Of(_terminal);
        int? place = parsed.GetValue(_plan);
        if (VisitDocuments.About(knowledge, profile, place, parsed.GetValue(_language)!) is not { } about)
        {
            notice?.Dispose();
            _terminal.Error.WriteLine($"There is no plan in place {place}, look at the shortlist with toiletaid rank.");
            return ExitCode.WrongUsage;
        }

        string text = Text(about, kind, format, parsed.GetValue(_for) == Helper, parsed.GetValue(_sheet));
        notice?.Dispose();
        return DocumentOutput.Write(_terminal, parsed.GetValue(_out), text);
    }

    private string Text(Case about, string kind, string format, bool toHelper, string? form)
    {
        if (kind == Record)
        {
            return VisitDocuments.Record(about, _terminal.Clock.GetUtcNow());
        }

        var document = kind == Note ? VisitDocuments.Note(about) : VisitDocuments.Sheet(about, toHelper, form is null ? null : form == InPictures);
        return DocumentOutput.Text(_terminal, document, format);
    }
}
