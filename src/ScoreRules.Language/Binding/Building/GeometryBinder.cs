using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds what a movement states about its joints, its load and where the load comes from.</summary>
internal sealed class GeometryBinder(BindContext context)
{
    private readonly DirectionBinder places = new(context);
    private readonly LoadBinder loads = new(context);

    /// <summary>How many such things a movement states.</summary>
    public static int CountOf(StatementSyntax statement) =>
        statement.Lines.Count(line => line is ClauseSyntax<DirectionSyntax[]> or ClauseSyntax<PairSyntax[]> || IsLoad(line.Spec))
        + statement.Lines.OfType<ClauseSyntax<AngleSyntax[]>>().Sum(line => line.Content.Length);

    /// <summary>Those that could be bound, in the order of the text.</summary>
    public IEnumerable<GeometryLine> Bind(StatementSyntax statement) =>
        statement.Lines.SelectMany(line => Bind(line, IsBut(line.Spec), statement)).OfType<GeometryLine>();

    private IEnumerable<GeometryLine?> Bind(ClauseSyntax line, bool but, StatementSyntax statement) => line switch
    {
        ClauseSyntax<AngleSyntax[]> angles => angles.Content.Select(angle => Angle(angle, but, statement)),
        ClauseSyntax<DirectionSyntax[]> place => [places.Bind(place, but, statement)],
        ClauseSyntax<PairSyntax[]> table => [loads.Table(table, but, statement)],
        ClauseSyntax<ValueSyntax> load when IsLoad(line.Spec) => [loads.Load(load, but, statement)],
        _ => [],
    };

    private static bool IsBut(ClauseSpec spec) => spec.Starter.StartsWith("but ", StringComparison.Ordinal);

    private static bool IsLoad(ClauseSpec spec) => spec == MovementGrammar.ExternalLoad || spec == MovementGrammar.ButExternalLoad;

    private GeometryLine.Angle? Angle(AngleSyntax angle, bool but, StatementSyntax statement)
    {
        if (MotionNames.Find(angle.Joint.Text) is not { } found)
        {
            ReportUnknown(angle.Joint, statement);
            return null;
        }

        var whole = angle.Joint.Span.Cover((angle.End ?? angle.Start).Span);
        if (angle.End is { } end && end.Number == angle.Start.Number)
        {
            context.Error("SR7202", $"\"{angle.Joint.Text}\" begins and ends at {Numbers.Plain(end.Number)}°, so it does not move", statement, whole, "no range",
                new Suggestion("write where it begins and where it ends, or say \"keeps\" for what stands still"));
            return null;
        }

        if (angle.Start.Unit is { } unit and not "°")
        {
            context.Error("SR3003", "A joint is measured in °", statement, angle.Start.Span, $"in {unit}", new Suggestion("write both angles in °"));
            return null;
        }

        return new GeometryLine.Angle(found.Motion, found.Sign * angle.Start.Number + 0.0, found.Sign * (angle.End ?? angle.Start).Number + 0.0, but, statement.At(whole));
    }

    private void ReportUnknown(NameSyntax joint, StatementSyntax statement)
    {
        var place = statement.At(joint.Span);
        var near = NameSuggester.Nearest(joint.Text, MotionNames.All);
        Suggestion[] advice = near.IsEmpty
            ? [new Suggestion($"motions are: {string.Join(", ", MotionNames.All)}")]
            : [.. near.Select(name => new Suggestion($"did you mean \"{name}\"?", new TextEdit(place, name), near.Length == 1 ? EditSafety.Safe : EditSafety.Shown))];
        context.Error("SR7201", $"\"{joint.Text}\" is not a motion of a joint", statement, joint.Span, "not a motion", advice);
    }
}
