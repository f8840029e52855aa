namespace ScoreRules.Language.Syntax.Nodes;

/// <summary>A tier that is cut anew, or called something else.</summary>
/// <param name="Name">The tier.</param>
/// <param name="Tier">Where it begins now; null when it is renamed.</param>
/// <param name="NewName">What it is called now; null when it is cut anew.</param>
internal sealed record ChangedTierSyntax(NameSyntax Name, TierSyntax? Tier, NameSyntax? NewName);
