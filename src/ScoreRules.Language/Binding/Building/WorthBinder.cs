using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds what values are worth.</summary>
internal sealed class WorthBinder(BindContext context)
{
    private readonly Numbers numbers = new(context);
    private readonly Codes codes = new(context);

    /// <summary>The worth function of a criterion over an attribute; null when it does not fit (which is reported).</summary>
    public WorthFunction? Bind(StatementSyntax statement, AttributeDefinition attribute, bool hasUnknownWorth)
    {
        if (statement.Find(ScoringGrammar.Worth) is not { } line)
        {
            return null;
        }

        if (!FitsKind(line, attribute, statement))
        {
            return null;
        }

        var sound = IsOneKind(line, statement);
        var worth = attribute.IsWord ? Words(statement, line, attribute, hasUnknownWorth) : Line(statement, line, attribute);
        return sound ? worth : null;
    }

    /// <summary>A share of full marks, 0 to 1; null when outside (which is reported).</summary>
    public double? Share(QuantitySyntax percent, StatementSyntax statement)
    {
        if (percent.Number is >= 0 and <= 100)
        {
            return percent.Number / 100;
        }

        context.Error("SR5004", "A worth lies between 0% and 100%", statement, percent.Span, "", new Suggestion("100% is full marks"));
        return null;
    }

    private bool IsOneKind(ClauseSyntax<WorthPointSyntax[]> line, StatementSyntax statement)
    {
        var mixed = line.Content.FirstOrDefault(point => point.IsStep != line.Content[0].IsStep);
        if (mixed is not null)
        {
            context.Error("SR5004", "\"at\" (straight lines) and \"from\" (steps) are mixed", statement, mixed.Span, "", new Suggestion("use one of the two words for all points"));
        }

        return mixed is null;
    }

    private WorthFunction? Line(StatementSyntax statement, ClauseSyntax<WorthPointSyntax[]> line, AttributeDefinition attribute)
    {
        var points = new List<(double At, double Worth)>();
        foreach (var point in line.Content)
        {
            var at = At(point, attribute, statement);
            var worth = Share(point.Worth, statement);
            if (at is { } value && worth is { } share)
            {
                points.Add((value, share));
            }
        }

        return points.Count == line.Content.Length && Rises(points, line.Content, statement) ? new WorthFunction(line.Content[0].IsStep, [.. points], []) : null;
    }

    private bool Rises(List<(double At, double Worth)> points, WorthPointSyntax[] written, StatementSyntax statement)
    {
        var fall = Enumerable.Range(1, points.Count - 1).FirstOrDefault(i => points[i].At <= points[i - 1].At);
        if (fall == 0)
        {
            return true;
        }

        var order = Enumerable.Range(0, points.Count).OrderBy(i => points[i].At).ToList();
        var twice = points.DistinctBy(point => point.At).Count() < points.Count;
        var place = statement.At(written[0].Span.Cover(written[^1].Span));
        var mended = string.Join(", ", order.Select(i => statement.Source.Slice(written[i].Span)));
        context.Error("SR5004", "Points of a worth rise along the attribute", statement, written[fall].At!.Span, $"not above {Numbers.Plain(points[fall - 1].At)}",
            twice ? new Suggestion("give each value one worth") : new Suggestion("order the points by the value after \"at\" or \"from\"", new TextEdit(place, mended), EditSafety.Safe));
        return false;
    }

    private double? At(WorthPointSyntax point, AttributeDefinition attribute, StatementSyntax statement) =>
        point.At?.Value is { } value ? numbers.Exactly(attribute, value, statement) : null;

    // Numbers where words belong, or the other way about, are one slip for the whole line: the attribute is another than was thought.
    private bool FitsKind(ClauseSyntax<WorthPointSyntax[]> line, AttributeDefinition attribute, StatementSyntax statement)
    {
        var wrong = line.Content.FirstOrDefault(point => attribute.IsWord ? point.At is { Name: null } : point.At is null or { Name: not null });
        if (wrong is null)
        {
            return true;
        }

        var (headline, label) = attribute.IsWord
            ? ($"\"{attribute.Name}\" is told in words, not in numbers", "a number")
            : ($"\"{attribute.Name}\" is told in numbers, not in words", "expected a number after \"at\"");
        context.Report("SR3004", Severity.Error, headline, statement, wrong.At?.Span ?? wrong.Span, label,
            [new Label(attribute.Info.Location, attribute.IsWord ? Numbers.Listed(attribute) : "declared here")]);
        return false;
    }

    private WorthFunction? Words(StatementSyntax statement, ClauseSyntax<WorthPointSyntax[]> line, AttributeDefinition attribute, bool hasUnknownWorth)
    {
        var byCode = Enumerable.Repeat(double.NaN, attribute.Values.Length).ToArray();
        var sound = true;
        foreach (var point in line.Content.Where(point => point.At is not null))
        {
            var code = codes.Of(attribute, point.At!.Name!, statement);
            var worth = Share(point.Worth, statement);
            sound &= code is not null && worth is not null;
            if (code is { } known && worth is { } share)
            {
                sound &= Set(byCode, known, share, point, statement);
            }
        }

        if (line.Content.FirstOrDefault(point => point.At is null) is { } rest && Share(rest.Worth, statement) is { } restWorth)
        {
            byCode = [.. byCode.Select(worth => double.IsNaN(worth) ? restWorth : worth)];
        }

        var allKnown = line.Content.All(point => point.At is null || attribute.CodeOf(point.At.Name!.Text) >= 0);
        return (!allKnown || Complete(byCode, statement, line, attribute, hasUnknownWorth)) && sound ? new WorthFunction(line.Content[0].IsStep, [], [.. byCode]) : null;
    }

    private bool Set(double[] byCode, int code, double worth, WorthPointSyntax point, StatementSyntax statement)
    {
        if (double.IsNaN(byCode[code]))
        {
            byCode[code] = worth;
            return true;
        }

        context.Error("SR3007", $"\"{point.At!.Name!.Text}\" is given a worth twice", statement, point.Span, "second time", new Suggestion("keep one of them"));
        return false;
    }

    private bool Complete(double[] byCode, StatementSyntax statement, ClauseSyntax<WorthPointSyntax[]> line, AttributeDefinition attribute, bool hasUnknownWorth)
    {
        var missing = attribute.Values.Where((_, code) => double.IsNaN(byCode[code])).ToList();
        if (missing.Count == 0 || hasUnknownWorth)
        {
            return true;
        }

        context.Report("SR5004", Severity.Error, $"Not every word of \"{attribute.Name}\" is given a worth: {string.Join(", ", missing.Take(8))}", statement, line.Span, "", [new Label(attribute.Info.Location, "its words are declared here")],
            new Suggestion("add them, end with \"... at the rest\", or add a line \"unknown is worth ...%\""));
        return false;
    }
}
