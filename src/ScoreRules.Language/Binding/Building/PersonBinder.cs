using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds the person whose body the mechanics of a house assume.</summary>
internal sealed class PersonBinder(BindContext context)
{
    private static readonly string[] Sexes = ["female", "male"];
    private readonly Sizes sizes = new(context);

    /// <summary>The person, or null when one of the three cannot be (which is reported).</summary>
    public PersonDefinition? Bind(ClauseSyntax<PersonSyntax> line, StatementSyntax statement)
    {
        var (mass, stature, sex) = (line.Content.Mass, line.Content.Stature, line.Content.Sex);
        var kilograms = sizes.Within(mass, "kg", "The mass of a person", 20, 300, statement);
        var metres = sizes.Within(stature, "m", "The height of a person", 1, 2.5, statement);
        if (!Sexes.Contains(sex.Key, StringComparer.Ordinal))
        {
            var near = NameSuggester.Nearest(sex.Text, Sexes);
            context.Error("SR3001", $"\"{sex.Text}\" is not a sex that tables of the body know", statement, sex.Span, "female or male", near.Length == 1
                ? new Suggestion($"did you mean \"{near[0]}\"?", new TextEdit(statement.At(sex.Span), near[0]), EditSafety.Safe)
                : new Suggestion("write female or male; it decides whose segment masses are used"));
            return null;
        }

        return kilograms is { } kg && metres is { } m ? new PersonDefinition(kg, m, sex.Key == "female", statement.At(line.Span)) : null;
    }
}
