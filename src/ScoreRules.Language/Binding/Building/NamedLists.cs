using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Lists in which a name that holds a comma was written without its quotes: <c>leave out push-up, feet raised</c>.</summary>
internal static class NamedLists
{
    private const int MostParts = 3;

    /// <summary>The names of a list without those that are parts of one declared name, which is reported once.</summary>
    /// <param name="names">The names as written.</param>
    /// <param name="isKnown">Whether a name is declared.</param>
    /// <param name="statement">The statement they stand in.</param>
    /// <param name="context">Where findings go.</param>
    /// <param name="split">Whether such a name was found.</param>
    public static List<NameSyntax> Whole(IReadOnlyList<NameSyntax> names, Func<string, bool> isKnown, StatementSyntax statement, BindContext context, out bool split)
    {
        var whole = new List<NameSyntax>();
        split = false;
        for (var i = 0; i < names.Count; i++)
        {
            var last = isKnown(names[i].Text) ? i : LastPart(names, i, isKnown);
            if (last == i)
            {
                whole.Add(names[i]);
                continue;
            }

            Report(names, i, last, statement, context);
            split = true;
            i = last;
        }

        return whole;
    }

    private static int LastPart(IReadOnlyList<NameSyntax> names, int first, Func<string, bool> isKnown)
    {
        for (var last = first + 1; last < names.Count && last < first + MostParts; last++)
        {
            if (isKnown(Joined(names, first, last)))
            {
                return last;
            }
        }

        return first;
    }

    private static string Joined(IReadOnlyList<NameSyntax> names, int first, int last) => string.Join(", ", names.Skip(first).Take(last - first + 1).Select(name => name.Text));

    private static void Report(IReadOnlyList<NameSyntax> names, int first, int last, StatementSyntax statement, BindContext context)
    {
        var (place, quoted) = (names[first].Span.Cover(names[last].Span), $"\"{Joined(names, first, last)}\"");
        context.Error("SR1013", $"{quoted} is one name that holds a comma, so it stands in double quotes", statement, place, "read as two names",
            new Suggestion($"write {quoted}", new TextEdit(statement.At(place), quoted), EditSafety.Safe));
    }
}
