using System.CommandLine;
using ShopPlanner.Cli;
using ShopPlanner.Cli.Bills;
using ShopPlanner.Cli.Care;
using ShopPlanner.Cli.Certificates;
using ShopPlanner.Cli.Check;
using ShopPlanner.Cli.Cut;
using ShopPlanner.Cli.Labels;
using ShopPlanner.Cli.Packet;
using ShopPlanner.Cli.Parts;
using ShopPlanner.Cli.Publish;
using ShopPlanner.Cli.Steps;
using ShopPlanner.Cli.Weekends;
using ShopPlanner.Cli.Work;

// One file per command.
var root = new RootCommand("Plans furniture for a small shop: what to buy, how to cut it and when to build it.")
{
    CutCommand.Create(),
    WorkCommand.Create(),
    PartsCommand.Create(),
    CheckCommand.Create(),
    StepsCommand.Create(),
    PacketCommand.Create(),
    ReadBillCommand.Create(),
    WeekendsCommand.Create(),
    CertificateCommand.Create(),
    LabelsCommand.Create(),
    PublishCommand.Create(),
    BackupCommand.Create(),
    RestoreCommand.Create(),
    MoveCommand.Create(),
};
return CommandLine.Run(root, args);
