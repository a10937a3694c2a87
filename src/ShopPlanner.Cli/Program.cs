using System.CommandLine;
using ShopPlanner.Cli;
using ShopPlanner.Cli.Bills;
using ShopPlanner.Cli.Check;
using ShopPlanner.Cli.Cut;
using ShopPlanner.Cli.Packet;
using ShopPlanner.Cli.Parts;
using ShopPlanner.Cli.Steps;
using ShopPlanner.Cli.Work;

// One file per command.
var root = new RootCommand("Plans furniture for a small shop: what to buy and how to cut it.")
{
    CutCommand.Create(),
    WorkCommand.Create(),
    PartsCommand.Create(),
    CheckCommand.Create(),
    StepsCommand.Create(),
    PacketCommand.Create(),
    ReadBillCommand.Create(),
};
return CommandLine.Run(root, args);
