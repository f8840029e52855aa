using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds movements: names first, then targets and facts.</summary>
internal sealed class MovementBinder(BindContext context, InfoBinder info)
{
    private readonly FactBinder facts = new(context);
    private readonly GeometryBinder geometry = new(context);
    private readonly List<(StatementSyntax Statement, NameSyntax Name)> declared = [];

    /// <summary>Declares the names of all movements.</summary>
    public void DeclareNames(IEnumerable<StatementSyntax> statements)
    {
        foreach (var statement in statements.Where(statement => statement.Spec == MovementGrammar.Movement && statement.First is not null))
        {
            var name = statement.Head<NameSyntax>();
            if (context.Movements.Declare(name, statement, name.Text))
            {
                declared.Add((statement, name));
            }
        }

        foreach (var (statement, name) in declared)
        {
            foreach (var synonym in statement.All(VocabularyGrammar.AlsoKnownAs).SelectMany(line => line.Content))
            {
                context.Movements.Declare(synonym, statement, name.Text);
            }
        }
    }

    /// <summary>All movements.</summary>
    public ImmutableArray<MovementDeclaration> Bind() => [.. declared.Select(pair => BindOne(pair.Statement, pair.Name))];

    private MovementDeclaration BindOne(StatementSyntax statement, NameSyntax name)
    {
        var like = statement.Find(MovementGrammar.Like);
        var trains = statement.Find(MovementGrammar.Trains);
        // A line that could not be read may have been the one that says what it is like or trains.
        var unread = statement.IsWhole ? null : statement.HeadLocation;
        var bound = facts.Bind(statement).ToImmutableArray();
        var lines = geometry.Bind(statement).ToImmutableArray();
        return new MovementDeclaration(info.Bind(statement, name))
        {
            Synonyms = [.. statement.All(VocabularyGrammar.AlsoKnownAs).SelectMany(line => line.Content).Select(synonym => synonym.Text)],
            Like = like is null ? null : Original(like.Content, name, statement),
            LikeLocation = like is null ? unread : statement.At(like.Content.Span),
            Trains = [.. (trains?.Content ?? []).Select(target => context.Targets.Find(target, statement)).OfType<TargetDefinition>()],
            TrainsLocation = trains is null ? unread : statement.At(trains.Span),
            AcceptsEvenLoad = statement.Has(HouseGrammar.AcceptsEvenLoad),
            IsWhole = statement.IsWhole && bound.Length == FactBinder.CountOf(statement) && lines.Length == GeometryBinder.CountOf(statement),
            Facts = bound,
            Geometry = lines,
        };
    }

    private string? Original(NameSyntax like, NameSyntax own, StatementSyntax statement)
    {
        var original = context.Movements.Find(like, statement);
        if (original == own.Text)
        {
            context.Error("SR3008", "A movement cannot be like itself", statement, like.Span, "its own name", new Suggestion("name another movement"));
            return null;
        }

        return original;
    }
}
