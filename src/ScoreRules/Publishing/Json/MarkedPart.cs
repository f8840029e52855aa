using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>What a study says in a target, beside the principles.</summary>
/// <param name="Target">The target.</param>
/// <param name="Study">The study.</param>
/// <param name="First">The side it speaks of first.</param>
/// <param name="Second">The other side.</param>
/// <param name="Low">Least difference of first less second, in points; null when open.</param>
/// <param name="High">Largest difference; null when open.</param>
/// <param name="PrincipleLead">First less second on principle.</param>
/// <param name="LeadFromOthers">The same after all other studies.</param>
/// <param name="Mark">How the principles fare: agrees, level, differs.</param>
/// <param name="MarkFromOthers">How principles and other studies fare.</param>
/// <param name="Miss">Points between the principles and what the study says.</param>
/// <param name="Criteria">By criterion, first less second.</param>
/// <param name="Rule">The statement.</param>
public sealed record MarkedPart(
    string Target,
    string Study,
    string First,
    string Second,
    double? Low,
    double? High,
    double PrincipleLead,
    double LeadFromOthers,
    string Mark,
    string MarkFromOthers,
    double Miss,
    ImmutableArray<CriterionLead> Criteria,
    RulePart Rule);
