using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Syntax.Grammar;

/// <summary>What a statement with <c>change</c> or <c>drop</c> is about.</summary>
/// <param name="Words">The kind of thing, such as "criterion" or "rule".</param>
/// <param name="Of">The kind of statement that declares such things; null for rules, which are of several kinds.</param>
/// <param name="IsDrop">Whether it drops the thing.</param>
internal sealed record OverlayKind(string Words, HeadSpec? Of, bool IsDrop);
