using System.Collections.Immutable;
using ToiletAid.App.Sessions;
using ToiletAid.App.Typed;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Calculators;

/// <summary>Reads options of a command as answers and quantities, and collects a sentence for each that cannot be used.</summary>
/// <param name="questions">Gives the answers, units and ranges, so that a calculator takes what the interview takes.</param>
public sealed class TypedOptions(QuestionSet questions)
{

    private readonly List<string> _faults = [];

    /// <summary>One sentence for each option that cannot be used; empty when all can.</summary>
    public IReadOnlyList<string> Faults => _faults;

    /// <summary>The answers that were read.</summary>
    public Answers Answers { get; private set; } = Answers.None;

    /// <summary>Notes a fault of an option.</summary>
    /// <param name="option">Its name, without dashes.</param>
    /// <param name="sentence">What is wrong and what to do, a whole sentence.</param>
    public void Fault(string option, string sentence) => _faults.Add($"--{option}: {sentence}");

    /// <summary>Reads an option as the answer to the question of the same name; nothing when it was not given.</summary>
    /// <param name="question">Id of the question, which is the name of the option.</param>
    /// <param name="text">As typed: a number counts in the first unit of the question and in its range; null when it was not given.</param>
    /// <exception cref="KeyNotFoundException">There is no such question.</exception>
    public void Answer(QuestionId question, string? text)
    {
        if (text is null)
        {
            return;
        }

        var asked = questions[question];
        var value = asked.Kind switch
        {
            QuestionKind.Many => Many(asked, text),
            QuestionKind.Number => Number(asked.Number!, question, text),
            _ => Choice(asked, text),
        };
        if (value is not null)
        {
            Answers = Answers.With(question, new(value, asked.Usually));
        }
    }

    /// <summary>Reads an option as the joint range of the same name, in degrees or radians; nothing when it was not given.</summary>
    /// <param name="part">Id of the joint's motion, which is the name of the option.</param>
    /// <param name="text">As typed; null when it was not given.</param>
    /// <exception cref="InvalidOperationException">There is no such motion.</exception>
    public void Joint(string part, string? text)
    {
        var asked = questions[QuestionIds.Joints];
        if (text is null || Number(asked.Parts.Single(p => p.Id == part).Number, part, text) is not { } number)
        {
            return;
        }

        double degrees = Core.Quantities.Units.Find("deg")!.FromSi(Core.Quantities.Units.Find(number.Unit)!.ToSi(number.Amount));
        var amounts = (Answers[QuestionIds.Joints]?.Value as AnswerValue.Parts)?.Amounts ?? ImmutableSortedDictionary<string, double>.Empty;
        Answers = Answers.With(QuestionIds.Joints, new(new AnswerValue.Parts(amounts.SetItem(part, degrees), "deg"), HowObtained.Measured));
    }

    /// <summary>Reads an option as a quantity.</summary>
    /// <param name="option">Its name, without dashes, for the fault that is noted.</param>
    /// <param name="text">As typed; null when it was not given.</param>
    /// <param name="asked">Units, and the range with both ends included; a number without a unit means the first unit.</param>
    /// <returns>The quantity in the SI unit of its dimension, except that a temperature is in °C; null when it was not given or was refused, and then <see cref="Faults"/> has a sentence more.</returns>
    public double? Quantity(string option, string? text, QuantityQuestion asked)
    {
        if (text is null)
        {
            return null;
        }

        var reading = QuantityReader.Read(text, asked);
        if (reading.Refusal is { } refusal)
        {
            Fault(option, refusal);
        }

        return reading.Quantity?.Si;
    }

    /// <summary>Reads an option as the id of an aid; null when it was not given, or there is no such aid and a fault was noted.</summary>
    /// <param name="catalogue">The aids.</param>
    /// <param name="id">As typed; null when it was not given.</param>
    public Aid? Aid(AidCatalogue catalogue, string? id) =>
        Find("aid", id, catalogue.Aids, a => a.Id);

    /// <summary>Reads options as ids of add-ons; for one that is not there a fault is noted and it is left out.</summary>
    /// <param name="catalogue">The add-ons.</param>
    /// <param name="ids">As typed, one an item.</param>
    public ImmutableArray<AddOn> AddOns(AidCatalogue catalogue, IEnumerable<string> ids) =>
        [.. ids.Select(id => Find("add-on", id, catalogue.AddOns, a => a.Id)).OfType<AddOn>()];

    private T? Find<T>(string option, string? id, ImmutableArray<T> among, Func<T, string> idOf)
        where T : class
    {
        if (id is null)
        {
            return null;
        }

        var found = among.FirstOrDefault(a => idOf(a) == id);
        if (found is null)
        {
            Fault(option, $"{Spoken.Quoted(id, "Nothing")} is not in the catalogue, use {Spoken.Choice([.. among.Select(idOf)])}.");
        }

        return found;
    }

    private AnswerValue.Number? Number(NumberSpec spec, string id, string text)
    {
        var (value, fault) = AnswerParser.Number(spec, id, text);
        if (value is null)
        {
            Fault(id, fault);
        }

        return value;
    }

    /// <summary>A word from the list or a quantity. Numbers of a list are not taken: there is no list on the screen that they could mean.</summary>
    private AnswerValue? Choice(Question asked, string text)
    {
        if (asked.FindOption(Word(text)) is { } option)
        {
            return new AnswerValue.Choice(option.Id);
        }

        if (asked.Number is { } spec && text.Any(char.IsAsciiDigit))
        {
            return Number(spec, asked.Id, text);
        }

        string or = asked.Number is { } n ? $", or a number of {Core.Quantities.Units.Find(n.Units[0])!.Name}" : string.Empty;
        Fault(asked.Id, $"{Spoken.Quoted(text, "Nothing")} is not an answer, use {Spoken.Choice([.. asked.Options.Select(o => o.Id)])}{or}.");
        return null;
    }

    private AnswerValue.Many? Many(Question asked, string text)
    {
        string[] items = [.. text.Split([',', ';', ' '], StringSplitOptions.RemoveEmptyEntries).Select(Word)];
        if (items is ["none"])
        {
            return new([]);
        }

        string? unknown = items.FirstOrDefault(i => asked.FindOption(i) is null);
        if (unknown is not null || items.Length == 0)
        {
            Fault(asked.Id, $"{Spoken.Quoted(unknown ?? string.Empty, "Nothing")} is not an answer, use {Spoken.Choice([.. asked.Options.Select(o => o.Id), "none"])}.");
            return null;
        }

        return new([.. asked.Options.Select(o => o.Id).Where(items.Contains)]);
    }

    private static string Word(string text) => text.Trim().ToLowerInvariant().Replace(' ', '-');
}
