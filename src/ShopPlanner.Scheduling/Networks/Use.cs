namespace ShopPlanner.Scheduling.Networks;

/// <summary>How much of a resource is taken.</summary>
/// <param name="Resource">Its number.</param>
/// <param name="Amount">More than zero.</param>
internal readonly record struct Use(int Resource, int Amount);

/// <summary>A precedence as seen from one of its tasks.</summary>
/// <param name="Task">Number of the other task.</param>
/// <param name="Wait">Minutes between the end of the first one's hold and the start of the second.</param>
internal readonly record struct Link(int Task, int Wait);
