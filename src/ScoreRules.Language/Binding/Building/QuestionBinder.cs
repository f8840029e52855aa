using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Binds questions.</summary>
internal sealed class QuestionBinder(BindContext context, InfoBinder info)
{
    private const string Kit = "equipment";
    private readonly Codes codes = new(context);
    private readonly Joints joints = new(context);

    /// <summary>All questions whose names could be resolved, in the order of the text.</summary>
    public ImmutableArray<QuestionDefinition> Bind(IEnumerable<StatementSyntax> statements)
    {
        var kinds = AskGrammar.All.ToDictionary(question => question.Head, question => question.Kind);
        return
        [
            .. statements.Where(statement => statement.First is not null && kinds.ContainsKey(statement.Spec))
                .Select(statement => BindOne(statement, kinds[statement.Spec])).OfType<QuestionDefinition>(),
        ];
    }

    private QuestionDefinition? BindOne(StatementSyntax statement, QuestionKind kind)
    {
        var said = info.Bind(statement);
        var question = new QuestionDefinition(said, kind) { Profile = Profile(statement), Targets = [.. said.OnlyFor.Select(entry => entry.Target).OfType<TargetDefinition>()] };
        return kind switch
        {
            QuestionKind.Why or QuestionKind.HowFirmly or QuestionKind.NewStudy => Pair(question, statement),
            QuestionKind.WhyNot => WhyNot(question, statement),
            QuestionKind.WhatLifts => Lift(question, statement),
            QuestionKind.WhatIsLost => Without(question, statement),
            QuestionKind.SoreJoint => Sore(question, statement),
            QuestionKind.WhereIsShaky => context.Movements.Find(statement.Head<NameSyntax>(), statement) is { } movement ? question with { Movements = [movement] } : null,
            QuestionKind.WhatRestsOn => Named(statement.Head<NameSyntax>(), statement, withCriteria: true) is { } name ? question with { Statement = name } : null,
            _ => About(question, statement.Head<NameSyntax[]>(), statement),
        };
    }

    private QuestionDefinition? Pair(QuestionDefinition question, StatementSyntax statement)
    {
        var asked = statement.Head<OrderSyntax>();
        NameSyntax[] names = [asked.First, asked.Second];
        var found = names.Select(name => context.Movements.Find(name, statement)).OfType<string>().ToImmutableArray();
        if (found.Length == 2 && found[0] == found[1])
        {
            context.Error("SR3008", "A movement is compared with itself", statement, names[1].Span, "the same movement", new Suggestion("name another movement"));
            return null;
        }

        return found.Length == 2 ? About(question with { Movements = found }, asked.Targets, statement) : null;
    }

    private QuestionDefinition? WhyNot(QuestionDefinition question, StatementSyntax statement)
    {
        var asked = statement.Head<WhyNotSyntax>();
        var name = Named(asked.Statement, statement, withCriteria: false);
        var movement = context.Movements.Find(asked.Movement, statement);
        return name is null || movement is null ? null : question with { Statement = name, Movements = [movement] };
    }

    private QuestionDefinition? Lift(QuestionDefinition question, StatementSyntax statement)
    {
        var asked = statement.Head<LiftSyntax>();
        var movement = context.Movements.Find(asked.Movement, statement);
        var below = statement.Find(AskGrammar.ToTier)?.Content;
        if (asked.Tier is { } beside && below is not null)
        {
            context.Report("SR1008", Severity.Error, "The tier to reach is said twice", statement, below.Span, "second time", [new Label(statement.At(beside.Span), "first time")], new Suggestion("keep one of them"));
            return null;
        }

        var named = asked.Tier ?? below;
        var tier = named is null ? null : context.Tiers.Find(named, statement);
        return movement is null || (tier is null && named is not null) ? null : About(question with { Movements = [movement], Tier = tier }, asked.Targets, statement);
    }

    private QuestionDefinition? Without(QuestionDefinition question, StatementSyntax statement)
    {
        var asked = statement.Head<LossSyntax>();
        return context.Attributes.TryFind(Kit) is { } equipment && codes.Of(equipment, asked.Kit, statement) is { } kit ? About(question with { Kit = kit }, asked.Targets, statement) : null;
    }

    private QuestionDefinition? Sore(QuestionDefinition question, StatementSyntax statement)
    {
        var asked = statement.Head<SoreSyntax>();
        return joints.Find(asked.Joint, statement) is { } joint ? About(question with { Joint = joint.Joint, Stress = joint.Stress }, asked.Targets, statement) : null;
    }

    private QuestionDefinition? About(QuestionDefinition question, NameSyntax[] targets, StatementSyntax statement)
    {
        var found = targets.Select(target => context.Targets.Find(target, statement)).ToList();
        return found.Contains(null) ? null : question with { Targets = [.. question.Targets, .. found!] };
    }

    private string? Profile(StatementSyntax statement) =>
        statement.Find(QuestionGrammar.UsingProfile) is { } line ? context.Profiles.Find(line.Content, statement)?.Text : null;

    // Called facts, rules and criteria share no table; the nearest name decides which of them reports.
    private string? Named(NameSyntax name, StatementSyntax statement, bool withCriteria)
    {
        var tables = withCriteria ? new[] { context.CalledFacts, context.Criteria, context.Rules } : [context.CalledFacts, context.Rules];
        var table = Array.Find(tables, table => table.LocationOf(name.Text) is not null)
            ?? Array.Find(tables, table => !NameSuggester.Nearest(name.Text, table.Names).IsEmpty) ?? context.Rules;
        return table.Find(name, statement)?.Text;
    }
}
