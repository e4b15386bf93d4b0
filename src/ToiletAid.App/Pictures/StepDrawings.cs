using System.Collections.Immutable;
using ToiletAid.App.Documents;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Pictures;

/// <summary>The drawing of each step of the set-up that is easier seen than said.</summary>
public static class StepDrawings
{
    /// <summary>One drawing a step, in the same order; null where a step needs none.</summary>
    /// <param name="ranked">The plan.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="setup">The steps' words, whose facts the drawings share.</param>
    /// <param name="toHelper">True when the words speak to the helper.</param>
    public static ImmutableArray<Drawing?> Of(RankedPlan ranked, Answers known, SetupText setup, bool toHelper)
    {
        var steps = setup.Each();
        var shown = new HashSet<(SetupAct, string?)>();

        // What is told once is drawn once.
        return [.. steps.Select(s => shown.Add((s.Act, s.With?.Id)) ? Of(s, ranked, aid => SceneFacts.Of(ranked.Plan, aid, known, setup.Lean), toHelper) : null)];
    }

    private static Drawing? Of(SetupStep step, RankedPlan ranked, Func<Aid, SceneFacts> sceneWith, bool toHelper)
    {
        if (step.With is not { } aid)
        {
            return step.Act == SetupAct.UseBin ? ToolDrawing.Bin(ranked.Plan.Aid.Method == MethodKind.Helper) : null;
        }

        var paper = aid == ranked.Plan.Aid ? ranked.Setup.Paper : ranked.Setup.CompanionPaper;
        var form = AidForm.Of(aid);
        var scene = sceneWith(aid);
        var tool = new ToolDrawing(form, scene.HasCuff, scene.HasThickHandle);
        return step.Act switch
        {
            SetupAct.BringToSkin or SetupAct.HelperCleans => new SceneDrawing(scene, toHelper).Make(),
            SetupAct.Clean when aid.Reach == ReachKind.None => new SceneDrawing(scene, toHelper).Make(),
            SetupAct.FoldPaper when paper is not null => PaperDrawing.Fold(paper.Strip, ranked.Plan.Has("prepared-paper")),
            SetupAct.LoadPaper => tool.Load(),
            SetupAct.CheckHold => tool.Hold(),
            SetupAct.FillWater => tool.Fill(),
            SetupAct.LetGo => tool.LetGo(LetsGoBy(aid)),
            SetupAct.WashUp => tool.Wash(),
            _ => null,
        };
    }

    private static LettingGo LetsGoBy(Aid aid) => aid.Operations.FirstOrDefault(o => o.Kind == OperationKind.Release) switch
    {
        { AgainstTheBody: true } => LettingGo.AgainstTheBody,
        { Act: HandAct.PinchAndTuck } => LettingGo.ByHand,
        _ => LettingGo.ByTheGrip,
    };
}
