using System.CommandLine;
using ShopPlanner.Packets.Labels;

namespace ShopPlanner.Cli.Labels;

/// <summary>How labels are asked for.</summary>
/// <param name="Sheet">Key of the sheet.</param>
/// <param name="Start">Number of the first label; null for 1.</param>
/// <param name="Nudge">To the right and down; null for nothing.</param>
/// <param name="HasCodes">Whether each has a QR code of its words.</param>
internal sealed record LabelsAsked(string Sheet, string? Start, string? Nudge, bool HasCodes);

/// <summary><c>labels INPUT.json -o FILE.pdf [--sheet KEY] [--start N] [--nudge RIGHT,DOWN] [--set name=value …] [--qr]</c>: a
/// label for every physical part.</summary>
internal static class LabelsCommand
{
    private static readonly Argument<string> Input = new("INPUT.json")
    {
        Description = "A design or a cut request. Use - for standard input.",
    };

    private static readonly Option<string> Output = new("-o", "--output")
    {
        Description = "Where to write the PDF. Use - for standard output.",
        HelpName = "FILE.pdf",
        Required = true,
    };

    private static readonly Option<string> Sheet = new("--sheet")
    {
        Description =
            $"The sheet of labels: {string.Join("; ", LabelSheets.All.Select(one => $"{one.Key} ({one.Name})"))}. "
            + $"Default: {LabelSheets.All[0].Key}.",
        HelpName = "KEY",
        DefaultValueFactory = _ => LabelSheets.All[0].Key,
    };

    private static readonly Option<string?> Start = new("--start")
    {
        Description = "The first label still on the sheet, counted along the rows. Default: 1.",
        HelpName = "N",
    };

    private static readonly Option<string?> Nudge = new("--nudge")
    {
        Description = "Moves all labels right and down; a minus moves left or up: --nudge=\"1 mm,-0.5 mm\", --nudge=0,1/32in.",
        HelpName = "RIGHT,DOWN",
    };

    private static readonly Option<string[]> Set = new("--set")
    {
        Description = "A different value for a named dimension of a design: --set width=30. Can be repeated.",
        HelpName = "name=value",
    };

    private static readonly Option<bool> Codes = new("--qr") { Description = "Adds a QR code of each label's own words." };

    public static Command Create()
    {
        var command = new Command(
            "labels",
            "Prints a label for every physical part as a PDF: mark, size, name, what is done at its edges, its piece of the "
                + "cabinetmaker's triangle. Exit status 0: done; 2: something given is wrong, one line each, and nothing was "
                + "written."
        )
        {
            Input,
            Output,
            Sheet,
            Start,
            Nudge,
            Set,
            Codes,
        };
        command.SetAction(parsed =>
            LabelsRun.Run(
                parsed.GetRequiredValue(Input),
                parsed.GetRequiredValue(Output),
                new(parsed.GetRequiredValue(Sheet), parsed.GetValue(Start), parsed.GetValue(Nudge), parsed.GetValue(Codes)),
                parsed.GetValue(Set) ?? []
            )
        );
        return command;
    }
}
