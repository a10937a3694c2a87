using System.CommandLine;
using ShopPlanner.Cli;
using ShopPlanner.Cli.Cut;
using ShopPlanner.Cli.Parts;
using ShopPlanner.Cli.Work;

// One file per command.
var root = new RootCommand("Plans furniture for a small shop: what to buy and how to cut it.")
{
    CutCommand.Create(),
    PartsCommand.Create(),
    WorkCommand.Create(),
};
return CommandLine.Run(root, args);
