using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds distances in directions: where a pulley or anchor stands, where the foot is pushed.</summary>
internal sealed class DirectionBinder(BindContext context)
{
    private static readonly (string Word, int Axis, int Sign, string Opposite)[] Directions =
        [("forward", 0, 1, "back"), ("back", 0, -1, "forward"), ("up", 1, 1, "down"), ("down", 1, -1, "up"), ("out", 2, 1, "in"), ("in", 2, -1, "out")];

    private readonly Sizes sizes = new(context);

    /// <summary>The place of a line, or null when it cannot be (which is reported).</summary>
    public GeometryLine? Bind(ClauseSyntax<DirectionSyntax[]> line, bool but, StatementSyntax statement)
    {
        var isFoot = line.Spec == MovementGrammar.FootLine || line.Spec == MovementGrammar.ButFootLine;
        var metres = new double?[3];
        var sound = true;
        foreach (var step in line.Content)
        {
            sound &= Bind(step, isFoot, metres, statement);
        }

        return sound ? new GeometryLine.Place(isFoot ? "foot line" : "pulley", metres[0] ?? 0, metres[1] ?? 0, metres[2] ?? 0, but, statement.At(line.Span)) : null;
    }

    private bool Bind(DirectionSyntax step, bool isFoot, double?[] metres, StatementSyntax statement)
    {
        var direction = Array.Find(Directions, known => known.Word == step.Direction.Key);
        if (direction.Word is null || (isFoot && direction.Axis != 0))
        {
            ReportUnknown(step.Direction, isFoot, statement);
            return false;
        }

        if (metres[direction.Axis] is not null)
        {
            context.Error("SR7203", $"\"{direction.Word}\" and \"{direction.Opposite}\" are one direction, and it stands here twice", statement, step.Distance.Span.Cover(step.Direction.Span), "second time", new Suggestion("keep one of the two"));
            return false;
        }

        if (step.Distance.Number < 0)
        {
            var turned = $"{Numbers.Plain(-step.Distance.Number)} {step.Distance.Unit ?? "m"} {direction.Opposite}";
            var whole = step.Distance.Span.Cover(step.Direction.Span);
            context.Error("SR7204", "A distance is 0 or more", statement, step.Distance.Span, "below 0", new Suggestion($"write \"{turned}\"", new TextEdit(statement.At(whole), turned)));
            return false;
        }

        if (sizes.In(step.Distance, "m", "A distance", statement) is not { } distance)
        {
            return false;
        }

        metres[direction.Axis] = direction.Sign * distance + 0.0;
        return true;
    }

    private void ReportUnknown(NameSyntax direction, bool isFoot, StatementSyntax statement)
    {
        var legal = isFoot ? ["forward", "back"] : Directions.Select(known => known.Word).ToArray();
        var near = NameSuggester.Nearest(direction.Text, legal);
        var place = statement.At(direction.Span);
        Suggestion[] advice = near.Length == 1
            ? [new Suggestion($"did you mean \"{near[0]}\"?", new TextEdit(place, near[0]), EditSafety.Safe)]
            : [new Suggestion($"directions are: {string.Join(", ", legal)}")];
        context.Error("SR7203", $"\"{direction.Text}\" is not a direction{(isFoot ? " along the foot" : "")}", statement, direction.Span, "not a direction", advice);
    }
}
