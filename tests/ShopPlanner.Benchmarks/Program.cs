using ShopPlanner.Benchmarks;

var commands = new Dictionary<string, Func<IReadOnlyList<string>, int>>(StringComparer.Ordinal)
{
    ["boards"] = BoardsCommand.Run,
    ["sheets"] = SheetsCommand.Run,
    ["demo"] = DemoCommand.Run,
    ["workings"] = WorkingsCommand.Run,
    ["growth"] = GrowthCommand.Run,
    ["sidebyside"] = SideBySideCommand.Run,
    ["designs"] = DesignsCommand.Run,
    ["steps"] = StepsCommand.Run,
    ["furniture"] = FurnitureCommand.Run,
    ["shop"] = ShopCommand.Run,
    ["weekends"] = WeekendsCommand.Run,
    ["together"] = TogetherCommand.Run,
    ["labels"] = LabelsCommand.Run,
    ["packet"] = PacketCommand.Run,
};

if (args.Length == 0 || !commands.TryGetValue(args[0], out var command))
{
    Console.Error.WriteLine($"Name what to measure first: {string.Join(", ", commands.Keys)}.");
    return 2;
}

try
{
    return command(args[1..]);
}
catch (UsageException wrong)
{
    Console.Error.WriteLine(wrong.Message);
    return 2;
}
