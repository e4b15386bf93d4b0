using System.Collections.Immutable;
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

    /// <summary>One drawing alone, of posture, way and aid, at the step where the skin is reached.</summary>
    /// <param name="ranked">The plan.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="setup">The steps' words, whose facts the drawing shares.</param>
    public static ImmutableArray<Drawing?> Way(RankedPlan ranked, Answers known, SetupText setup)
    {
        var steps = setup.Each().ToList();
        int at = steps.FindIndex(s => s.Act is SetupAct.BringToSkin or SetupAct.HelperCleans || (s is { Act: SetupAct.Clean, With.Reach: ReachKind.None }));
        return [.. steps.Select((s, i) => i == at ? Of(s, ranked, aid => SceneFacts.Of(ranked.Plan, aid, known, setup.Lean), toHelper: false) : null)];
    }

    /// <summary>A drawing for every step, for who goes by pictures.</summary>
    /// <param name="ranked">The plan.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="setup">The steps' words, whose facts the drawings share.</param>
    public static ImmutableArray<Drawing?> Every(RankedPlan ranked, Answers known, SetupText setup)
    {
        SceneFacts Scene(Aid aid) => SceneFacts.Of(ranked.Plan, aid, known, setup.Lean);
        Drawing Wipe() => CareDrawing.Wipe(known.Choice(QuestionIds.Sex) != Sex.Male);
        bool washes = ranked.Plan.Aid.Water is not null;
        return [.. setup.Each().Select(s => Of(s, ranked, Scene, toHelper: false) ?? s.Act switch
        {
            SetupAct.TakePosture => new SceneDrawing(Scene(ranked.Plan.Aid), toHelper: false, isStill: true).Make(),
            SetupAct.PutWipesReady => CareDrawing.WipesReady(),
            SetupAct.SetWarmth or SetupAct.MixWater => CareDrawing.Warmth(setup.WarmestCelsius),
            SetupAct.Clean => washes ? CareDrawing.Wash() : Wipe(),
            SetupAct.Dry => CareDrawing.Air(),
            SetupAct.Finish => washes ? CareDrawing.Pat() : s.With is { Water: not null } ? CareDrawing.Wash() : Wipe(),
            SetupAct.Look => setup.SomebodyLooks ? CareDrawing.SomebodyLooks() : CareDrawing.LookAtPaper(),
            SetupAct.LookAtSkin => CareDrawing.Mirror(),
            _ => CareDrawing.Hands(),
        })];
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
            SetupAct.FoldPaper when paper is not null => PaperDrawing.Fold(paper.Strip, ranked.Plan.Has(AddOnIds.PreparedPaper)),
            SetupAct.BunchPaper when paper is not null => PaperDrawing.Bunch(paper.Strip),
            SetupAct.LoadPaper => tool.Load(),
            SetupAct.CheckHold => tool.Hold(),
            SetupAct.FillWater => tool.Fill(),
            SetupAct.LetGo => tool.LetGo(LetsGoBy(aid)),
            SetupAct.WashUp => tool.Wash(),
            _ => null,
        };
    }

    internal static LettingGo LetsGoBy(Aid aid) => aid.Operations.FirstOrDefault(o => o.Kind == OperationKind.Release) switch
    {
        { AgainstTheBody: true } => LettingGo.AgainstTheBody,
        { Act: HandAct.PinchAndTuck } => LettingGo.ByHand,
        _ => LettingGo.ByTheGrip,
    };
}
