using System.Collections.Immutable;

namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>One line of what a study found.</summary>
internal sealed record FindingSyntax(NameSyntax First, StudyVerdict Verdict, OperandSyntax? Amount, NameSyntax Second, ImmutableArray<NameSyntax> Regions);
