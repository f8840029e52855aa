using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Joints for which movements are rated.</summary>
internal sealed class Joints(BindContext context)
{
    private const string Stress = " stress";

    /// <summary>The joint of a name with its rating, "NAME stress"; null when there is none (which is reported).</summary>
    public (string Joint, AttributeDefinition Stress)? Find(NameSyntax name, StatementSyntax statement)
    {
        if (context.Attributes.TryFind(name.Text + Stress) is { Kind: AttributeKind.Rating } stress)
        {
            return (name.Text, stress);
        }

        var joints = context.Attributes.Names.Where(known => known.EndsWith(Stress, StringComparison.Ordinal)).Select(known => known[..^Stress.Length]).ToList();
        var near = NameSuggester.Nearest(name.Text, joints);
        var place = statement.At(name.Span);
        context.Error("SR2013", $"\"{name.Text}\" is not a joint that movements are rated for", statement, name.Span, "",
            near.IsEmpty
                ? [new Suggestion(joints.Count == 0 ? $"declare how movements are rated for it: \"attribute {name.Text}{Stress}\"" : $"joints are: {string.Join(", ", joints)}")]
                : [.. near.Select(joint => new Suggestion($"did you mean \"{joint}\"?", new TextEdit(place, joint), near.Length == 1 ? EditSafety.Safe : EditSafety.Shown))]);
        return null;
    }
}
