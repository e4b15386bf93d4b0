using System.Collections.Immutable;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.Core.Simulation;

/// <summary>Somebody who would give the answers so far, with answers to all other questions.</summary>
internal sealed class LikelyPerson
{
    /// <summary>Answers that reach is worked out from here.</summary>
    private static readonly ImmutableArray<QuestionId> Landmarks = [QuestionIds.Place, QuestionIds.Posture, QuestionIds.ReachBehind, QuestionIds.ReachFront, QuestionIds.Lean, QuestionIds.Joints];

    /// <summary>Build counts only where it is known, and then it is the same for all: each drawn build would have to be solved anew.</summary>
    private static readonly ImmutableArray<QuestionId> Build = [QuestionIds.Age, QuestionIds.Sex, QuestionIds.Stature, QuestionIds.Mass];

    private Answers? _filled;

    /// <summary>Makes a person.</summary>
    /// <param name="coding">How answers are numbered.</param>
    /// <param name="answers">All answers.</param>
    /// <param name="known">Those of them that were given.</param>
    internal LikelyPerson(AnswerCoding coding, Answers answers, Answers known)
    {
        Coding = coding;
        Answers = answers;
        Codes = coding.Of(answers);
        ForReach = LandmarksOf(answers, known);
        ReachCodes = coding.Of(ForReach);
        Key = KeyOf([.. Codes, .. ReachCodes]);
    }

    /// <summary>The same for people with the same answers.</summary>
    internal Int128 Key { get; }

    /// <summary>How answers are numbered.</summary>
    internal AnswerCoding Coding { get; }

    /// <summary>All answers; none to questions that do not arise.</summary>
    internal Answers Answers { get; }

    /// <summary>The same as numbers.</summary>
    internal int[] Codes { get; }

    /// <summary>How many of the people who would give these answers this one stands for; they add up to 1.</summary>
    internal double Weight { get; set; }

    /// <summary>The answers with what is assumed where a question does not arise.</summary>
    internal Answers Filled => _filled ??= Assumptions.Fill(Coding.Questions, Answers);

    /// <summary>The answers that reach is worked out from.</summary>
    internal Answers ForReach { get; }

    /// <summary>The same as numbers.</summary>
    internal int[] ReachCodes { get; }

    private static Answers LandmarksOf(Answers answers, Answers known)
    {
        var kept = Landmarks.Where(q => answers[q] is not null).Concat(Build.Where(known.Knows)).Select(q => KeyValuePair.Create(q.Text, answers[q]!));
        return Answers.None.With(answers.Many(QuestionIds.Precautions) is { } some
            ? kept.Append(KeyValuePair.Create(QuestionIds.Precautions.Text, new Answer(new AnswerValue.Many([.. some.Where(AnswerMapping.IsAboutReach)]), HowObtained.Reported)))
            : kept);
    }

    /// <summary>Two mixes of 64 bits (FNV-1a with two offsets): two people with different answers do not share both in practice.</summary>
    private static Int128 KeyOf(int[] codes)
    {
        ulong one = 14695981039346656037, two = 1099511628211;
        foreach (int code in codes)
        {
            one = (one ^ (uint)code) * 1099511628211;
            two = (ulong.RotateLeft(two, 23) ^ (uint)code) * 0x9E3779B97F4A7C15;
        }

        return new(one, two);
    }
}
