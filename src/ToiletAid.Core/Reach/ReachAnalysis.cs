namespace ToiletAid.Core.Reach;

/// <summary>How long an aid must be: the shortest way from the grip centre of the hand to the skin to be cleaned, over all poses that a
/// person can take, in every posture and by every approach.</summary>
public static class ReachAnalysis
{
    /// <summary>Computes the reach of one person.</summary>
    /// <param name="tables">Bodies, joints, postures.</param>
    /// <param name="person">What is known; whatever is not known is drawn from its whole range.</param>
    /// <param name="settings">Draws, seed, and which postures and approaches.</param>
    /// <returns>One need for each posture and approach; same input, same bits.</returns>
    /// <exception cref="ArgumentException">An input is outside its range; see <see cref="ReachPersonCheck"/> for all of them.</exception>
    public static ReachReport Analyse(BodyTables tables, ReachPerson person, ReachSettings settings)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(settings);
        var study = new ReachStudy(tables, person, settings.Draws, settings.Seed);
        return study.Report(settings.Postures, settings.Approaches, study.Solve);
    }
}
