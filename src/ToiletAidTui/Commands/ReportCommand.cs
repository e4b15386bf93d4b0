using System.CommandLine;
using ToiletAid.App.Documents;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;

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

    private ReportCommand(Terminal terminal)
    {
        _terminal = terminal;
        _sheet.AcceptOnlyFromAmong(InWords, InPictures);
        _format.AcceptOnlyFromAmong(Formats.Text, Formats.Markdown, Formats.Html, Formats.Json);
    }

    internal static Command Define(Terminal terminal)
    {
        var report = new ReportCommand(terminal);
        var command = new Command("report", "Write the clinic note, a sheet to leave behind, or data for the record system.")
        {
            report._path, report._kind, report._for, report._sheet, report._format, report._plan, report._language, report._out, report._aids, ClinicOption.Define(),
        };
        command.SetAction(report.Run);
        return command;
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

        return OneProfile.With(_terminal, parsed.GetValue(_path)!, parsed.GetValue(_aids), (knowledge, profile) => Write(parsed, knowledge, profile, kind, format));
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
        if (parsed.GetValue(_out) is not { } path)
        {
            _terminal.Output.Write(text);
            return ExitCode.Good;
        }

        if (OutputFile.Write(_terminal, path, text) is not { } fault)
        {
            return ExitCode.Good;
        }

        _terminal.Error.WriteLine(fault);
        return ExitCode.InputRefused;
    }

    private string Text(Case about, string kind, string format, bool toHelper, string? form)
    {
        if (kind == Record)
        {
            return VisitDocuments.Record(about, _terminal.Clock.GetUtcNow());
        }

        var document = kind == Note ? VisitDocuments.Note(about) : VisitDocuments.Sheet(about, toHelper, form is null ? null : form == InPictures);
        return format switch
        {
            Formats.Html => HtmlDocument.Write(document),
            Formats.Markdown => MarkdownDocument.Write(document),
            _ => Plain(document),
        };
    }

    private string Plain(Document document)
    {
        using var text = new StringWriter { NewLine = "\n" };
        new SpeechLines(text, _terminal.OutputIsTerminal ? _terminal.Width : 0).Lines(PlainDocument.Lines(document));
        return text.ToString();
    }
}
