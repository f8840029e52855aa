using System.Collections.Immutable;

namespace ScoreRules.Publishing.Json;

/// <summary>A choice, or why there is none.</summary>
/// <param name="Asked">What was asked for, in words.</param>
/// <param name="Targets">For which targets.</param>
/// <param name="Week">Whether for a whole week.</param>
/// <param name="Profile">For which profile, or null.</param>
/// <param name="Rule">The statement that asks for it, or null.</param>
/// <param name="Cautions">Cautions of the movements chosen, with the movements.</param>
/// <param name="Limits">What it keeps, in words.</param>
/// <param name="Points">Points over all that is wanted; null when nothing can be chosen.</param>
/// <param name="Chosen">The movements, best rank first.</param>
/// <param name="WithFewer">The best that each smaller number can reach.</param>
/// <param name="OneByOne">What taking the one that adds most each time reaches; null when nothing can be chosen.</param>
/// <param name="InTheWay">When nothing can be chosen: limits any one of which is enough to give up.</param>
/// <param name="DoNotGoTogether">When nothing can be chosen and no one limit is to blame: limits that cannot be kept together.</param>
/// <param name="LeftOut">Parts that the choice does not serve.</param>
/// <param name="ServedByNobody">Parts that nothing in the lists serves.</param>
/// <param name="MajorGroups">For a week, each major muscle group with its movements.</param>
/// <param name="SetAside">What the profile sets aside.</param>
/// <param name="NotTold">Movements that a sum cannot count.</param>
public sealed record ChoicePart(
    string Asked,
    ImmutableArray<string> Targets,
    bool Week,
    string? Profile,
    RulePart? Rule,
    ImmutableArray<AboutPart> Cautions,
    ImmutableArray<string> Limits,
    double? Points,
    ImmutableArray<ChosenPart> Chosen,
    ImmutableArray<ReachedPart> WithFewer,
    ReachedPart? OneByOne,
    ImmutableArray<InTheWayPart> InTheWay,
    ImmutableArray<string> DoNotGoTogether,
    ImmutableArray<ServedPart> LeftOut,
    ImmutableArray<ServedPart> ServedByNobody,
    ImmutableArray<MajorGroupPart> MajorGroups,
    ImmutableArray<SetAsidePart> SetAside,
    ImmutableArray<SetAsidePart> NotTold);
