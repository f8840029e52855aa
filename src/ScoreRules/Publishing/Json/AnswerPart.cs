using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>The answer to one question.</summary>
/// <param name="Question">The question, as it was asked.</param>
/// <param name="Kind">The kind of question.</param>
/// <param name="Cautions">Cautions of the movements it speaks of.</param>
/// <param name="Sections">The answer, target by target.</param>
/// <param name="Notes">How it was found, and what bounds it has.</param>
public sealed record AnswerPart(string Question, string Kind, ImmutableArray<AboutPart> Cautions, ImmutableArray<AnswerSectionPart> Sections, ImmutableArray<string> Notes);
