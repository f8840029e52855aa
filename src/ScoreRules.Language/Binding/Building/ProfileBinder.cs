using System.Collections.Immutable;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds profiles.</summary>
internal sealed class ProfileBinder(BindContext context, InfoBinder info)
{
    private const string Kit = "equipment";
    private const string SoreJoint = "sore joint";
    private readonly ConditionBinder conditions = new(context);
    private readonly Codes codes = new(context);
    private readonly Joints joints = new(context);

    /// <summary>All profiles.</summary>
    public ImmutableArray<ProfileDefinition> Bind(IEnumerable<StatementSyntax> statements) =>
        [.. statements.Where(statement => statement.Spec == QuestionGrammar.Profile && statement.First is not null).Select(BindOne)];

    private ProfileDefinition BindOne(StatementSyntax statement)
    {
        var sore = statement.All(QuestionGrammar.Sore).Select(line => joints.Find(line.Content, statement)).OfType<(string, AttributeDefinition)>().ToImmutableArray();
        var kit = statement.Find(QuestionGrammar.Kit);
        return new ProfileDefinition(info.Bind(statement, statement.Head<NameSyntax>()))
        {
            Kit = kit is not null && context.Attributes.TryFind(Kit) is { } equipment ? codes.Of(equipment, kit.Content, statement) : null,
            Sore = sore,
            Audience = Audience(statement, !sore.IsEmpty),
            Avoid = Ways(statement, QuestionGrammar.AvoidWhen),
            Prefer = Ways(statement, QuestionGrammar.PreferWhen),
        };
    }

    private ImmutableArray<int> Audience(StatementSyntax statement, bool isSore)
    {
        if (context.Person is not { } audience)
        {
            return [];
        }

        var told = statement.Find(QuestionGrammar.Audience) is { } line ? codes.Of(audience, line.Content, statement) ?? [] : [];
        var soreJoint = audience.CodeOf(SoreJoint);
        return isSore && soreJoint >= 0 && !told.Contains(soreJoint) ? [.. told.Append(soreJoint).Order()] : told;
    }

    // "and" goes on with the way in above it, "or when" and a second "avoid when" open another one.
    private AnyOf? Ways(StatementSyntax statement, ClauseSpec<ConditionLineSyntax> opener)
    {
        var ways = new List<List<Condition>>();
        var inside = false;
        foreach (var line in statement.Lines.OfType<ClauseSyntax<ConditionLineSyntax>>())
        {
            var opens = line.Spec == opener;
            inside = opens || (inside && (line.Spec == Reach.And || line.Spec == Reach.OrWhen));
            if (!inside || conditions.BindLine(line.Content, statement) is not { } part)
            {
                continue;
            }

            if (opens || line.Spec == Reach.OrWhen || ways.Count == 0)
            {
                ways.Add([]);
            }

            ways[^1].Add(part);
        }

        var place = ways.Count == 0 ? null : ways[0][0].Location;
        return place is null ? null : new AnyOf([.. ways.Select(way => new AllOf([.. way], way[0].Location))], place);
    }
}
