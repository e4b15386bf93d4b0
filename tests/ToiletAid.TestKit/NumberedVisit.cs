using ToiletAid.Core.Person;

namespace ToiletAid.TestKit;

/// <summary>Visits that can be told apart by their answers.</summary>
internal static class NumberedVisit
{
    /// <summary>The session with this number; no two have the same answers.</summary>
    internal static Session Session(int number) => new(new(2026, 3, 9), Depth.Quick, Answers.None
        .With(QuestionIds.Stature, new(new AnswerValue.Number(120 + ((number % 10_000) / 100.0), "cm"), HowObtained.Measured))
        .With(QuestionIds.Mass, new(new AnswerValue.Number(40 + (number / 10_000), "kg"), HowObtained.Measured)));

    /// <summary>The number of a session.</summary>
    internal static int Number(Session session)
    {
        var stature = (AnswerValue.Number)session.Answers[QuestionIds.Stature]!.Value;
        var mass = (AnswerValue.Number)session.Answers[QuestionIds.Mass]!.Value;
        return (int)Math.Round((stature.Amount - 120) * 100) + ((int)(mass.Amount - 40) * 10_000);
    }
}
