using System.Globalization;
using CsCheck;
using ToiletAid.App.Typed;

namespace ToiletAid.Core.Tests.Typed;

public sealed class QuantityReaderLaws
{
    private static readonly string[] Words =
        ["cm", "m", "ft", "in", "'", "\"", "kg", "lb", "st", "N", "°", "F", "C", ",", ".", "-", "+", " ", "and", ":", "½", "1", "23", "456", "0", "m3", "/", "£", "\u2212", "e"];

    private static readonly Gen<string> Anything = Gen.OneOf(
        Gen.String,
        Gen.OneOf(Words).Array[0, 12].Select(string.Concat),
        Gen.Char["0123456789.,'\" -+½¼¾¹٣५"].Array[0, 80].Select(c => new string(c)));

    [Fact]
    public void Any_text_is_understood_or_refused_in_words_and_nothing_is_thrown() =>
        Gen.Select(Anything, Gen.OneOf(Questions.All)).Sample(
            (text, question) =>
            {
                var reading = QuantityReader.Read(text, question);
                if (reading.Quantity is { } quantity)
                {
                    Assert.Null(reading.Refusal);
                    Assert.True(double.IsFinite(quantity.Si), text);
                    Assert.InRange(quantity.Si, question.Low - 1e-6, question.High + 1e-6);
                    Assert.Equal(quantity.Unit.ToSi(quantity.Value), quantity.Si);
                }
                else
                {
                    Assert.Matches(@"^[A-Za-z0-9 ,.:?'\-]+[.?]$", reading.Refusal!);
                }
            },
            iter: 50_000);

    [Fact]
    public void What_is_printed_is_read_back_as_the_same_number() =>
        Gen.Select(Gen.OneOf(Questions.All), Gen.Double[0, 1], Gen.Int[0, 20], Gen.Bool, Gen.Bool).Sample(
            (question, share, unitIndex, inWords, comma) =>
            {
                var unit = question.Units[unitIndex % question.Units.Length];
                double value = Math.Round(unit.FromSi(question.Low + (share * (question.High - question.Low))), 2);
                value = question.IsCount ? Math.Round(value) : value;
                double si = unit.ToSi(value);
                if (si < question.Low || si > question.High)
                {
                    return;
                }

                string number = value.ToString("0.##", CultureInfo.InvariantCulture);
                number = comma ? number.Replace('.', ',') : number;
                bool unitless = unit.Symbol is "money" or "years" or "a-day";
                string text = unitless ? number : number + " " + (inWords ? unit.Name : unit.Symbol);

                var reading = QuantityReader.Read(text, question);

                Assert.True(reading.Refusal is null, $"{text}: {reading.Refusal}");
                Assert.Equal(value, reading.Quantity!.Value);
                Assert.Equal(unit.Symbol, reading.Quantity.Unit.Symbol);
                Assert.Equal(si, reading.Quantity.Si);
            },
            iter: 10_000);

    [Fact]
    public void Feet_with_inches_and_stone_with_pounds_are_read_exactly() =>
        Gen.Select(Gen.Int[4, 7], Gen.Int[0, 11], Gen.Int[4, 60], Gen.Int[0, 13]).Sample(
            (feet, inches, stone, pounds) =>
            {
                var stature = QuantityReader.Read($"{feet} ft {inches} in", Questions.Stature).Quantity!;
                var shorter = QuantityReader.Read($"{feet}'{inches}", Questions.Stature).Quantity!;
                var mass = QuantityReader.Read($"{stone} st {pounds}", Questions.Mass).Quantity!;

                Assert.Equal((12 * feet) + inches, stature.Value);
                Assert.Equal(stature.Si, shorter.Si);
                Assert.Equal((14 * stone) + pounds, mass.Value);
                Assert.Equal(((14 * stone) + pounds) * 0.45359237, mass.Si, 1e-9);
            },
            iter: 1_000);

    [Fact]
    public void The_answer_that_a_refusal_suggests_is_accepted()
    {
        int suggested = 0;
        Gen.Select(Gen.Double[0, 4000], Gen.OneOf(Questions.Stature, Questions.Mass, Questions.Grip, Questions.Water, Questions.AidMass), Gen.Int[0, 9]).Sample(
            (raw, question, unitIndex) =>
            {
                var unit = question.Units[unitIndex % question.Units.Length];
                string text = Math.Round(raw, 1).ToString("0.#", CultureInfo.InvariantCulture) + " " + unit.Symbol;
                const string Ask = "Did you mean ";
                if (QuantityReader.Read(text, question).Refusal is { } refusal && refusal.Contains(Ask, StringComparison.Ordinal))
                {
                    string hint = refusal[(refusal.IndexOf(Ask, StringComparison.Ordinal) + Ask.Length)..].TrimEnd('?');
                    Assert.NotNull(QuantityReader.Read(hint, question).Quantity);
                    suggested++;
                }
            },
            iter: 5_000);

        // The generator must really produce suggestions, or the law above says nothing.
        Assert.True(suggested > 100, $"only {suggested} suggestions");
    }
}
