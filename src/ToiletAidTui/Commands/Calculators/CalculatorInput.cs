using ToiletAid.App.Calculators;
using ToiletAid.App.Typed;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands.Calculators;

/// <summary>What one run of a calculator has to work with.</summary>
/// <param name="knowledge">Built-in knowledge.</param>
/// <param name="text">Text of an option by its name without dashes; null when it was not given.</param>
/// <param name="terminal">What the command talks to.</param>
internal sealed class CalculatorInput(KnowledgeBase knowledge, Func<string, string?> text, Terminal terminal)
{
    internal KnowledgeBase Knowledge { get; } = knowledge;

    internal TypedOptions Typed { get; } = new(knowledge.Questions);

    internal bool Has(string option) => text(option) is not null;

    internal string? Text(string option) => text(option);

    /// <summary>Writes a file that was asked for; gives the sentence that says why not, or null.</summary>
    internal string? Write(string path, string content) => OutputFile.Write(terminal, path, content);

    /// <summary>Reads options as answers to the questions of the same names.</summary>
    internal void Answers(params ReadOnlySpan<QuestionId> questions)
    {
        foreach (var question in questions)
        {
            Typed.Answer(question, text(question));
        }
    }

    /// <summary>An option as a quantity, SI; null when not given or refused.</summary>
    internal double? Quantity(string option, QuantityQuestion asked) => Typed.Quantity(option, text(option), asked);

    /// <summary>An option as a whole number; null when not given or refused.</summary>
    internal int? Count(string option, (int Low, int High) range) =>
        (int?)Quantity(option, QuantityQuestion.Of(option.Replace('-', ' '), range.Low, range.High, "ratio") with { IsCount = true });

    /// <summary>The aid of --aid, or null.</summary>
    internal Aid? Aid() => Typed.Aid(Knowledge.Catalogue, text("aid"));
}
