using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>One person made ready: body, joints and draws are worked out once, and each posture and approach is solved when it is asked for.</summary>
internal sealed class ReachStudy
{
    private const int MostDraws = 4096;

    private readonly BodyTables _tables;
    private readonly ReachPerson _person;
    private readonly PersonModel _model;
    private readonly PersonDraw _middle;
    private readonly PersonDraw[] _drawn;
    private readonly NeedSolver _solver;
    private readonly ulong _seed;
    private readonly Lazy<ImmutableArray<ReachContradiction>> _contradictions;

    /// <summary>Makes a person ready.</summary>
    /// <exception cref="ArgumentException">An input or the number of draws is outside its range.</exception>
    internal ReachStudy(BodyTables tables, ReachPerson person, int draws, ulong seed)
    {
        if (draws is < 0 or > MostDraws)
        {
            throw new ArgumentOutOfRangeException(nameof(draws), draws, $"the number of draws must be between 0 and {MostDraws}");
        }

        ImmutableArray<ReachIssue> issues = ReachPersonCheck.Check(tables, person);
        if (!issues.IsEmpty)
        {
            throw new ArgumentException(issues[0].Sentence, nameof(person));
        }

        (_tables, _person, _seed) = (tables, person, seed);
        _model = new PersonModel(tables, person);
        var landmarks = new LandmarkReach(tables.Model, _model);
        if (person.Behind is { } behind && !_model.HasJointsBehind)
        {
            _model.Behind = landmarks.Behind(behind);
        }

        if (person.Front is { } front)
        {
            _model.Front = landmarks.Front(front);
        }

        _middle = _model.Middle();
        _drawn = Drawn(_model, draws, seed);
        _solver = new NeedSolver(tables.Model, person.Precautions, _drawn, [.. _drawn.Select(d => d.Body.FaceBeyond)]);
        _contradictions = new(() => Contradictions.Find(tables.Model, person, _model, landmarks));
    }

    /// <summary>The persons that were drawn.</summary>
    internal ReadOnlySpan<PersonDraw> Persons => _drawn;

    /// <summary>The middle person.</summary>
    internal ref readonly PersonDraw Middle => ref _middle;

    /// <summary>Solves one posture and approach.</summary>
    internal ReachNeed Solve(Posture posture, Approach approach) => _solver.Solve(in _middle, posture, approach);

    /// <summary>All that was found.</summary>
    /// <param name="postures">Postures; none means all.</param>
    /// <param name="approaches">Approaches; none means all.</param>
    /// <param name="need">Gives the need for each, by <see cref="Solve"/> or from before.</param>
    internal ReachReport Report(
        ImmutableArray<Posture> postures,
        ImmutableArray<Approach> approaches,
        Func<Posture, Approach, ReachNeed> need) => new()
        {
            Needs =
            [
                .. from posture in postures.IsDefaultOrEmpty ? [.. Enum.GetValues<Posture>()] : postures
                   from approach in approaches.IsDefaultOrEmpty ? [.. Enum.GetValues<Approach>()] : approaches
                   select need(posture, approach),
            ],
            Contradictions = _contradictions.Value,
            HandReach = _middle.Body.FaceBeyond,
            Body = Lengths(_middle.Body),
            OutsideSurvey = BodyModel.IsOutsideSurvey(_tables, _person.Sex, _middle.Body.Stature, _middle.Body.Mass),
            CapabilityBehind = _model.Behind,
            CapabilityFront = _model.Front,
            Seed = _seed,
        };

    private static PersonDraw[] Drawn(PersonModel model, int count, ulong seed)
    {
        var hypercube = new LatinHypercubeDraws(count, seed);
        var draws = new PersonDraw[count];
        for (int i = 0; i < draws.Length; i++)
        {
            draws[i] = model.Draw(hypercube, i);
        }

        return draws;
    }

    private static BodyLengths Lengths(in Body body) => new()
    {
        Stature = body.Stature,
        Mass = body.Mass,
        ShoulderAboveHip = body.ShoulderUp,
        ShoulderFromMidline = body.ShoulderOut,
        UpperArm = body.UpperArm,
        Forearm = body.Forearm,
        PelvisDepth = 2 * body.PelvisForward,
        PelvisBreadth = 2 * body.PelvisSideways,
        AbdomenDepth = (2 * body.TrunkForward) + body.AbdomenGive,
        ThighThickness = 2 * (body.ThighRadius + body.ThighGive),
    };
}
