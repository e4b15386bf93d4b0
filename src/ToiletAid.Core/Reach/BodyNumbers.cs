using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>What a body, the seat below it and an aid are made of, beside the regressions; SI, ratios of stature where nothing else is said.</summary>
/// <param name="numbers">Gives them by id.</param>
internal sealed class BodyNumbers(NumberTable numbers)
{
    private readonly double[] _lengthError = ReachNumbers.ByHowObtained(numbers, "length");
    private readonly double[] _massError = ReachNumbers.ByHowObtained(numbers, "mass");

    /// <summary>Least share of what is most plausible that a drawn length or mass has.</summary>
    public double LeastShare { get; } = numbers.Value("error.body-least-share");

    public SurveyRange Women { get; } = new(numbers, Sex.Female);

    public SurveyRange Men { get; } = new(numbers, Sex.Male);

    /// <summary>Factor on every spread outside the survey.</summary>
    public double SurveyWidening { get; } = numbers.Value("survey.widening");

    /// <summary>Correlation between what upper arm and forearm are longer than the stature tells.</summary>
    public double ArmCorrelation { get; } = numbers.Value("arm.residual-correlation");

    public HipGirth Hips { get; } = new(numbers);

    public ArmForStature Arms { get; } = new(numbers);

    public double ShoulderJointBelowAcromion { get; } = numbers.Value("ratio.shoulder-joint-below-acromion");

    public double HipJointAboveSeat { get; } = numbers.Value("ratio.hip-joint-above-seat");

    public double ElbowJointBeforeOlecranon { get; } = numbers.Value("ratio.elbow-joint-before-olecranon");

    /// <summary>How far the fingertips of women and of men reach past the grip centre.</summary>
    public (double Female, double Male) HandBeyondGrip { get; } = (numbers.Value("ratio.hand-beyond-grip.female"), numbers.Value("ratio.hand-beyond-grip.male"));

    /// <summary>How far short of the fingertips the middle of the wiping face lies, m.</summary>
    public double FaceBeforeFingertips { get; } = numbers.Value("hand.wiping-face-before-fingertips");

    /// <summary>Share of the hand's breadth.</summary>
    public double HandRadius { get; } = numbers.Value("ratio.hand-radius-of-breadth");

    /// <summary>Share of the hand's radius.</summary>
    public double AidRadius { get; } = numbers.Value("ratio.aid-radius-of-hand");

    public double ForearmRadius { get; } = numbers.Value("ratio.forearm-radius");

    public double FleshBelowSeat { get; } = numbers.Value("ratio.flesh-below-seat");

    /// <summary>Share of the breadth of the hips.</summary>
    public double TrunkBreadth { get; } = numbers.Value("ratio.trunk-of-hip-breadth");

    public double WaistAboveHip { get; } = numbers.Value("ratio.waist-above-hip");

    /// <summary>m.</summary>
    public double OpeningWidth { get; } = numbers.Value("seat.opening-width");

    /// <summary>From the hip joint, m.</summary>
    public double OpeningBehindHip { get; } = numbers.Value("seat.opening-behind-hip");

    /// <inheritdoc cref="OpeningBehindHip"/>
    public double OpeningBeforeHip { get; } = numbers.Value("seat.opening-before-hip");

    /// <summary>How far the middle of the hand goes down in the opening, m.</summary>
    public double HandBelowSeat { get; } = numbers.Value("seat.hand-below-seat");

    /// <summary>Rise of the hips when the buttocks are partly off the seat, m.</summary>
    public double SeatRise { get; } = numbers.Value("seat.rise-when-leaning");

    /// <summary>Cost of a handle's bend, m/rad².</summary>
    public double HandleBend { get; } = numbers.Value("aid.bend-radius");

    /// <summary>m.</summary>
    public double TissueGive { get; } = numbers.Value("aid.tissue-give");

    /// <summary>How far an arm presses the front of the belly in, m.</summary>
    public double AbdomenGive { get; } = numbers.Value("flesh.abdomen-give");

    /// <summary>How far a hand or forearm presses the inside of a thigh in, m.</summary>
    public double ThighGive { get; } = numbers.Value("flesh.thigh-give");

    /// <summary>m.</summary>
    public double LongestWay { get; } = numbers.Value("aid.longest-that-can-be-steered");

    /// <summary>m.</summary>
    public double FleshDepth { get; } = numbers.Value("solver.flesh-depth");

    /// <summary>For a stature of one; see <see cref="Body.Stiffness"/>.</summary>
    public double Stiffness { get; } = numbers.Value("solver.stiffness");

    /// <summary>Standard error of a length that was obtained, m.</summary>
    public double LengthError(HowObtained how) => _lengthError[(int)how];

    /// <summary>Standard error of a mass that was obtained, kg.</summary>
    public double MassError(HowObtained how) => _massError[(int)how];

    /// <summary>The smallest and the greatest of one sex in the survey of bodies.</summary>
    internal sealed class SurveyRange(NumberTable numbers, Sex sex)
    {
        /// <summary>kg.</summary>
        public double MassLeast { get; } = numbers.Value($"survey.{Words.Of(sex)}.mass-least");

        /// <inheritdoc cref="MassLeast"/>
        public double MassGreatest { get; } = numbers.Value($"survey.{Words.Of(sex)}.mass-greatest");

        /// <summary>m.</summary>
        public double StatureLeast { get; } = numbers.Value($"survey.{Words.Of(sex)}.stature-least");

        /// <inheritdoc cref="StatureLeast"/>
        public double StatureGreatest { get; } = numbers.Value($"survey.{Words.Of(sex)}.stature-greatest");
    }

    /// <summary>How breadth and depth of the hips differ from what the survey of fit adults tells.</summary>
    internal sealed class HipGirth(NumberTable numbers)
    {
        private readonly (double From, double Share, double Added) _women = (numbers.Value("girth.female.heavy-from"), numbers.Value("girth.female.heavy-share"), 0);
        private readonly (double From, double Share, double Added) _men = (numbers.Value("girth.male.heavy-from"), numbers.Value("girth.male.heavy-share"), numbers.Value("girth.male.added"));

        /// <summary>Mass that counts for the hips, kg, and what is added to breadth and depth, m.</summary>
        /// <param name="mass">Mass, kg.</param>
        /// <param name="sex">Unstated averages both.</param>
        public (double Mass, double Added) For(double mass, Sex sex)
        {
            double women = Counts(mass, _women), men = Counts(mass, _men);
            return sex switch
            {
                Sex.Female => (women, _women.Added),
                Sex.Male => (men, _men.Added),
                _ => ((women + men) / 2, (_women.Added + _men.Added) / 2),
            };
        }

        private static double Counts(double mass, (double From, double Share, double Added) of) =>
            mass <= of.From ? mass : of.From + (of.Share * (mass - of.From));
    }

    /// <summary>How much longer arms are for the stature in older people, whose stature has shrunk and whose arms have not.</summary>
    internal sealed class ArmForStature(NumberTable numbers)
    {
        private readonly (double Female, double Male) _older = Pair(numbers, "60-to-74");
        private readonly (double Female, double Male) _oldest = Pair(numbers, "75-and-over");
        private readonly double _oldestFrom = numbers.Value("arm-for-stature.oldest-from");

        /// <summary>Years.</summary>
        public double From { get; } = numbers.Value("arm-for-stature.from");

        /// <summary>Added spread from that age on, as a share.</summary>
        public double Spread { get; } = numbers.Value("arm-for-stature.spread");

        /// <summary>Factor on the length of an estimated arm.</summary>
        /// <param name="ageYears">Years; null where it is not known, which changes nothing.</param>
        /// <param name="sex">Unstated averages both.</param>
        public double Factor(double? ageYears, Sex sex)
        {
            if (!(ageYears >= From))
            {
                return 1;
            }

            (double female, double male) = ageYears < _oldestFrom ? _older : _oldest;
            return sex switch
            {
                Sex.Female => female,
                Sex.Male => male,
                _ => (female + male) / 2,
            };
        }

        private static (double Female, double Male) Pair(NumberTable numbers, string ages) =>
            (numbers.Value($"arm-for-stature.female.{ages}"), numbers.Value($"arm-for-stature.male.{ages}"));
    }
}
