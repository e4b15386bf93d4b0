using ToiletAid.App.Typed;

namespace ToiletAid.Core.Tests.Typed;

public sealed class QuantityReaderTests
{
    /// <summary>SI values worked by hand from the definitions of 1959 (inch 0.0254 m, pound 0.45359237 kg) and 9.80665 m/s².</summary>
    [Theory]
    [InlineData("stature", "172", 172, "cm", 1.72)]
    [InlineData("stature", "172cm", 172, "cm", 1.72)]
    [InlineData("stature", " 1.72 m ", 1.72, "m", 1.72)]
    [InlineData("stature", "1,72 m", 1.72, "m", 1.72)]
    [InlineData("stature", "1 m 72", 172, "cm", 1.72)]
    [InlineData("stature", "1m72cm", 172, "cm", 1.72)]
    [InlineData("stature", "5 ft 7 in", 67, "in", 1.7018)]
    [InlineData("stature", "5'7\"", 67, "in", 1.7018)]
    [InlineData("stature", "5'7", 67, "in", 1.7018)]
    [InlineData("stature", "5\u2032 7\u2033", 67, "in", 1.7018)]
    [InlineData("stature", "5\u20197\u201D", 67, "in", 1.7018)]
    [InlineData("stature", "5 foot 7", 67, "in", 1.7018)]
    [InlineData("stature", "5 feet and 7 inches", 67, "in", 1.7018)]
    [InlineData("stature", "5ft7", 67, "in", 1.7018)]
    [InlineData("stature", "5 ft 7½ in", 67.5, "in", 1.7145)]
    [InlineData("stature", "6 ft", 6, "ft", 1.8288)]
    [InlineData("stature", "67 in.", 67, "in", 1.7018)]
    [InlineData("body weight", "70", 70, "kg", 70)]
    [InlineData("body weight", "70.5 kg", 70.5, "kg", 70.5)]
    [InlineData("body weight", "154 lbs", 154, "lb", 69.85322498)]
    [InlineData("body weight", "11 st 4", 158, "lb", 71.66759446)]
    [InlineData("body weight", "11 st 4 lb", 158, "lb", 71.66759446)]
    [InlineData("body weight", "11st4lb", 158, "lb", 71.66759446)]
    [InlineData("body weight", "11 stone", 11, "st", 69.85322498)]
    [InlineData("grip", "22 kg", 22, "kgf", 215.7463)]
    [InlineData("grip", "22", 22, "kgf", 215.7463)]
    [InlineData("grip", "48 lb", 48, "lbf", 213.51463827)]
    [InlineData("grip", "48 lbf", 48, "lbf", 213.51463827)]
    [InlineData("grip", "210 N", 210, "N", 210)]
    [InlineData("grip", "210 newtons", 210, "N", 210)]
    [InlineData("water temperature", "104 F", 104, "F", 40)]
    [InlineData("water temperature", "104°F", 104, "F", 40)]
    [InlineData("water temperature", "38 degrees", 38, "C", 38)]
    [InlineData("water temperature", "38 °C", 38, "C", 38)]
    [InlineData("shoulder flexion", "95°", 95, "deg", 1.6580627893946132)]
    [InlineData("peg test time", "1 min 20 s", 80, "s", 80)]
    [InlineData("peg test time", "1:20", 80, "s", 80)]
    [InlineData("peg test time", "24.6", 24.6, "s", 24.6)]
    [InlineData("reservoir", "180 ml", 180, "ml", 0.00018)]
    [InlineData("reservoir", "0.5 L", 0.5, "l", 0.0005)]
    [InlineData("reservoir", "0.001 m3", 0.001, "m3", 0.001)]
    [InlineData("flow", "0.6 l/min", 0.6, "l/min", 0.00001)]
    [InlineData("weight of the aid", "1,5 kg", 1.5, "kg", 1.5)]
    [InlineData("weight of the aid", "0,250 kg", 0.25, "kg", 0.25)]
    [InlineData("weight of the aid", "8 oz", 8, "oz", 0.226796185)]
    [InlineData("age", "81 years old", 81, "years", 81)]
    [InlineData("cleans a day", "3 times a day", 3, "a-day", 3)]
    [InlineData("price", "£12.50", 12.5, "money", 12.5)]
    [InlineData("price", "12.50 €", 12.5, "money", 12.5)]
    public void What_people_type_is_understood(string question, string text, double value, string symbol, double si)
    {
        var reading = QuantityReader.Read(text, Questions.Named(question));

        Assert.Null(reading.Refusal);
        Assert.Equal(text.Trim(), reading.Quantity!.Text);
        Assert.Equal(value, reading.Quantity.Value);
        Assert.Equal(symbol, reading.Quantity.Unit.Symbol);
        Assert.Equal(si, reading.Quantity.Si, 1e-8 * Math.Max(1e-3, si));
    }

    [Theory]
    [InlineData("stature", "172 m", "172 metres is out of range for stature. Did you mean 172 centimetres?")]
    [InlineData("stature", "1.72", "1.72 centimetres is out of range for stature. Did you mean 1.72 metres?")]
    [InlineData("stature", "5 ft 13 in", "The inches after feet must be fewer than 12. Did you mean 6 feet 1 inch?")]
    [InlineData("stature", "5 ft 12 in", "The inches after feet must be fewer than 12. Did you mean 6 feet 0 inches?")]
    [InlineData("body weight", "30 st 40", "The pounds after stone must be fewer than 14. Did you mean 32 stone 12 pounds?")]
    [InlineData("stature", "70 kg", "70 kilograms is a weight, but stature is a length. Type stature like this: 150 centimetres.")]
    [InlineData("stature", "1 m 7", "Say the unit of the second number. Did you mean 7 centimetres?")]
    [InlineData("stature", "172 furlongs", "The unit after 172 is not known. Stature is given in centimetres, metres, inches or feet.")]
    [InlineData("stature", "5 7", "There are two numbers and no unit between them. Type stature like this: 150 centimetres.")]
    [InlineData("stature", "tall", "That is not a number with a unit. Type stature like this: 150 centimetres.")]
    [InlineData("stature", "", "Nothing was typed. Type stature like this: 150 centimetres.")]
    [InlineData("stature", "5.5 ft 7 in", "When inches follow, the feet must be a whole number and neither may be below zero.")]
    [InlineData("stature", "1720 mm", "Stature is given in centimetres, metres, inches or feet. Did you mean 172 centimetres?")]
    [InlineData("body weight", "900 kg", "900 kilograms is out of range for body weight. Give a number from 20 to 400 kilograms.")]
    [InlineData("body weight", "500", "500 kilograms is out of range for body weight. Did you mean 500 pounds?")]
    [InlineData("grip", "210", "210 kilograms-force is out of range for grip. Did you mean 210 pounds-force?")]
    [InlineData("water temperature", "104", "104 degrees Celsius is out of range for water temperature. Did you mean 104 degrees Fahrenheit?")]
    [InlineData("weight of the aid", "1,500 g", "A comma before three digits can be read in two ways. Did you mean 1500 grams?")]
    [InlineData("weight of the aid", "2,500 oz", "A comma before three digits can be read in two ways. Did you mean 2.5 ounces?")]
    [InlineData("price", "1,500", "A comma before three digits can be read in two ways. Did you mean 1500 or 1.5?")]
    [InlineData("price", "1,234.50", "Type the number without thousands marks. Did you mean 1234.5?")]
    [InlineData("cleans a day", "2.5", "Cleans a day is counted in whole numbers. Did you mean 2 or 3?")]
    [InlineData("age", "-4", "-4 years is out of range for age. Give a number from 1 to 120 years.")]
    public void What_makes_no_sense_is_refused_with_a_suggestion(string question, string text, string refusal) =>
        Assert.Equal(refusal, QuantityReader.Read(text, Questions.Named(question)).Refusal);

    [Fact]
    public void Nothing_at_all_is_refused_like_an_empty_line() =>
        Assert.Equal(QuantityReader.Read(string.Empty, Questions.Stature).Refusal, QuantityReader.Read(null, Questions.Stature).Refusal);
}
