namespace ShopPlanner.Core.Making.Times;

/// <summary>How long work took that is done.</summary>
/// <param name="Kind">What was done, a word of the steps format: <c>groove</c>; <see cref="WorkTimes.Cutting"/> at the
/// saw.</param>
/// <param name="Usual">Minutes at work as estimated without any log; 0 where there was no estimate.</param>
/// <param name="Took">Minutes at work as logged.</param>
public sealed record LoggedTime(string Kind, int Usual, int Took);

/// <summary>An estimate that logs were put to.</summary>
/// <param name="Minutes">Minutes at work as this shop takes them.</param>
/// <param name="Usual">Minutes at work without any log.</param>
/// <param name="Logs">From how many logs of the same kind of work; 0 where the estimate is the usual one.</param>
public readonly record struct LearnedTime(int Minutes, int Usual, int Logs);
