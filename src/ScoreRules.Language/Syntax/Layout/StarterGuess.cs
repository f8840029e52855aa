namespace ScoreRules.Language.Syntax.Layout;

/// <summary>What a line with a misspelt first word was taken for, so that reading can go on without follow-on findings.</summary>
/// <param name="Meant">The kind of statement or line.</param>
/// <param name="RestStart">Offset just behind the misspelt words.</param>
internal sealed record StarterGuess<T>(T Meant, int RestStart)
    where T : class;
