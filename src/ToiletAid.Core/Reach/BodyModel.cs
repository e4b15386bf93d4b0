using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Makes the body of one plausible person from what is known and from standard normal deviates for what is not.</summary>
internal static class BodyModel
{
    /// <summary>Number of deviates that a body takes: one for each body measure.</summary>
    public const int Deviates = (int)BodyMeasure.ThighLength + 1;

    /// <summary>Makes a body.</summary>
    /// <param name="tables">Estimates and numbers.</param>
    /// <param name="person">What is known.</param>
    /// <param name="deviates">Standard normal deviates by body measure; zeros give the middle person.</param>
    /// <param name="armDeviate">One more for the arms of older people, whose length for the stature is less certain.</param>
    public static Body Make(BodyTables tables, ReachPerson person, ReadOnlySpan<double> deviates, double armDeviate = 0)
    {
        BodyNumbers numbers = tables.Model.Body;
        double stature = Known(tables, person, BodyMeasure.Stature, person.Stature, 0, 0, 1, deviates);
        double mass = Known(tables, person, BodyMeasure.Mass, person.Mass, stature, 0, 1, deviates);
        double widen = IsOutsideSurvey(tables, person.Sex, stature, mass) ? numbers.SurveyWidening : 1;

        double LengthAt(BodyMeasure measure, double kilograms, ReadOnlySpan<double> z) => Known(
            tables,
            person,
            measure,
            person.Lengths.TryGetValue(measure, out ReachInput given) ? given : null,
            stature,
            kilograms,
            widen,
            z);

        double Length(BodyMeasure measure, ReadOnlySpan<double> z) => LengthAt(measure, mass, z);

        (double hipMass, double hipAdded) = numbers.Hips.For(mass, person.Sex);
        double Hip(BodyMeasure measure, ReadOnlySpan<double> z) => LengthAt(measure, hipMass, z) + (person.Lengths.ContainsKey(measure) ? 0 : hipAdded);

        Body body = default;
        body.Stature = stature;
        body.Mass = mass;
        double drop = numbers.ShoulderJointBelowAcromion * stature;
        double hip = numbers.HipJointAboveSeat * stature;
        body.ShoulderUp = Length(BodyMeasure.ShoulderHeightSitting, deviates) - drop - hip;
        body.ShoulderOut = Length(BodyMeasure.ShoulderBreadth, deviates) / 2;

        // Stature shrinks with age and arms do not. An arm that was measured is as long as it was measured.
        double arms = numbers.Arms.Factor(person.AgeYears, person.Sex);
        double spread = person.AgeYears >= numbers.Arms.From ? 1 + (numbers.Arms.Spread * armDeviate) : 1;
        (double upperFactor, double upperSpread) = person.Lengths.ContainsKey(BodyMeasure.UpperArm) ? (1, 1) : (arms, spread);
        (double foreFactor, double foreSpread) = person.Lengths.ContainsKey(BodyMeasure.ForearmToGrip) ? (1, 1) : (arms, spread);
        body.UpperArm = ((Length(BodyMeasure.UpperArm, deviates) * upperFactor) - drop) * upperSpread;
        body.Forearm = ((Length(BodyMeasure.ForearmToGrip, Together(person, numbers, deviates, stackalloc double[Deviates])) * foreFactor) - (numbers.ElbowJointBeforeOlecranon * stature)) * foreSpread;
        body.HandBeyond = stature * person.Sex switch
        {
            Sex.Female => numbers.HandBeyondGrip.Female,
            Sex.Male => numbers.HandBeyondGrip.Male,
            _ => (numbers.HandBeyondGrip.Female + numbers.HandBeyondGrip.Male) / 2,
        };
        body.FaceBeyond = body.HandBeyond - numbers.FaceBeforeFingertips;
        body.HandRadius = numbers.HandRadius * Length(BodyMeasure.HandBreadth, deviates);
        body.AidRadius = numbers.AidRadius * body.HandRadius;
        double abdomen = Length(BodyMeasure.AbdomenDepth, deviates);
        double buttock = Hip(BodyMeasure.ButtockDepth, deviates);
        double hips = Hip(BodyMeasure.HipBreadth, deviates);
        double thigh = Length(BodyMeasure.ThighThickness, deviates);
        body.ThighLength = Length(BodyMeasure.ThighLength, deviates);
        Fill(ref body, numbers, hip, abdomen, buttock, hips, thigh);
        return body;
    }

    /// <summary>The deviates with that of the forearm going along with that of the upper arm, where both are estimated.</summary>
    private static ReadOnlySpan<double> Together(ReachPerson person, BodyNumbers numbers, ReadOnlySpan<double> deviates, Span<double> together)
    {
        deviates.CopyTo(together);
        if (!person.Lengths.ContainsKey(BodyMeasure.UpperArm) && !person.Lengths.ContainsKey(BodyMeasure.ForearmToGrip))
        {
            double r = numbers.ArmCorrelation;
            together[(int)BodyMeasure.ForearmToGrip] = (r * deviates[(int)BodyMeasure.UpperArm]) + (Math.Sqrt(1 - (r * r)) * deviates[(int)BodyMeasure.ForearmToGrip]);
        }

        return together;
    }

    /// <summary>True when stature or mass lies outside the people measured in the survey.</summary>
    public static bool IsOutsideSurvey(BodyTables tables, Sex sex, double stature, double mass)
    {
        BodyNumbers.SurveyRange low = sex == Sex.Male ? tables.Model.Body.Men : tables.Model.Body.Women;
        BodyNumbers.SurveyRange high = sex == Sex.Female ? tables.Model.Body.Women : tables.Model.Body.Men;
        return mass < low.MassLeast || mass > high.MassGreatest || stature < low.StatureLeast || stature > high.StatureGreatest;
    }

    private static void Fill(ref Body body, BodyNumbers numbers, double hip, double abdomen, double buttock, double hips, double thigh)
    {
        body.ForearmRadius = numbers.ForearmRadius * body.Stature;
        body.PelvisForward = buttock / 2;
        body.PelvisSideways = hips / 2;
        body.PelvisUp = hip + (numbers.FleshBelowSeat * body.Stature);

        // Belly and thighs are soft where an arm lies against them; what is left of the belly keeps its back where it was.
        body.AbdomenGive = Math.Min(numbers.AbdomenGive, abdomen / 2);
        abdomen -= body.AbdomenGive;
        body.TrunkForward = abdomen / 2;
        body.TrunkSideways = numbers.TrunkBreadth * hips / 2;

        // Buttock and abdomen stand in one line behind; what the abdomen is deeper stands out in front.
        body.TrunkCentre = (abdomen - buttock) / 2;
        body.WaistUp = numbers.WaistAboveHip * body.Stature;
        body.ThighGive = Math.Min(numbers.ThighGive, thigh / 4);
        body.ThighRadius = (thigh / 2) - body.ThighGive;

        // Two thighs side by side fill the breadth of the hips, so the middle of each is half way out.
        body.ThighOut = hips / 4;
        body.SeatUp = -hip;
        body.OpeningHalfWidth = numbers.OpeningWidth / 2;
        body.OpeningBack = numbers.OpeningBehindHip;
        body.OpeningFront = numbers.OpeningBeforeHip;
        body.OpeningDepth = numbers.HandBelowSeat;
        body.SeatRise = numbers.SeatRise;
        body.HandleBend = numbers.HandleBend;
        body.TissueGive = numbers.TissueGive;
        body.LongestWay = numbers.LongestWay;
        body.FleshDepth = numbers.FleshDepth;
        body.Stiffness = numbers.Stiffness / body.Stature;
        body.Invert();
    }

    private static double Known(
        BodyTables tables,
        ReachPerson person,
        BodyMeasure measure,
        ReachInput? given,
        double stature,
        double mass,
        double widen,
        ReadOnlySpan<double> deviates)
    {
        double z = deviates[(int)measure];
        BodyNumbers numbers = tables.Model.Body;
        if (given is { } known)
        {
            double error = measure == BodyMeasure.Mass ? numbers.MassError(known.How) : numbers.LengthError(known.How);
            return Math.Max(known.Value + (z * error), known.Value * numbers.LeastShare);
        }

        // Far outside the survey a straight line goes on to nothing and beyond, so an estimate is never less than what would be taken as measured.
        (double mean, double spread) = tables.Estimate(measure, person.Sex, stature, mass);
        double least = measure == BodyMeasure.Mass ? tables.Model.Input.MassLeast : tables.Model.Input.LengthLeast;
        return Math.Max(mean + (widen * spread * z), Math.Max(mean * numbers.LeastShare, least));
    }
}
