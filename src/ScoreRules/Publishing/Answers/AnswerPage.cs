using System.Collections.Immutable;
using ScoreRules.Answers;

namespace ScoreRules.Publishing.Answers;

/// <summary>An answer in words: what text and JSON are made from.</summary>
/// <param name="Answer">What was found out.</param>
/// <param name="Sections">Its parts.</param>
/// <param name="Notes">How it was found, and what bounds it has.</param>
internal sealed record AnswerPage(Answer Answer, ImmutableArray<AnswerSection> Sections, ImmutableArray<string> Notes);
