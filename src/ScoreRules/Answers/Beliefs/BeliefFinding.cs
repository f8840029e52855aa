using System.Collections.Immutable;
using ScoreRules.Language.Binding;

namespace ScoreRules.Answers.Beliefs;

/// <summary>What rests on some statements: the house judged again without them.</summary>
/// <param name="Statements">The statements taken out together; one, or all ways in to a called fact.</param>
/// <param name="Moves">Movements in another tier without them, by target and name.</param>
/// <param name="Unscored">Lists that cannot be scored without them, by the name of their target.</param>
public sealed record BeliefFinding(ImmutableArray<BoundStatement> Statements, ImmutableArray<TierMove> Moves, ImmutableArray<string> Unscored);
