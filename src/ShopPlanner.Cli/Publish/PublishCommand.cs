using System.CommandLine;
using ShopPlanner.Services.Publishing;

namespace ShopPlanner.Cli.Publish;

/// <summary><c>publish DESIGN.json -o FOLDER|FILE.zip [--set name=value …] [--license ID] [--by NAME] [--title TEXT] [--paper
/// letter|a4] [--photo FILE …]</c>: a plan that others can read, build and resize.</summary>
internal static class PublishCommand
{
    private static readonly Argument<string> Design = new("DESIGN.json")
    {
        Description = "The design. Use - for standard input.",
    };

    private static readonly Option<string> Output = new("-o", "--output")
    {
        Description = "A zip file, where the name ends in .zip; else a folder, which must be new or empty.",
        HelpName = "FOLDER|FILE.zip",
        Required = true,
    };

    private static readonly Option<string[]> Set = new("--set")
    {
        Description = "A different value for a named dimension: --set width=30 --set \"height=34 1/2\". Can be repeated.",
        HelpName = "name=value",
    };

    private static readonly Option<string?> License = new("--license")
    {
        Description = $"The terms, by SPDX identifier: {Licenses}. Default: {PublishLicense.Reserved.Id}.",
        HelpName = "ID",
    };

    private static readonly Option<string?> By = new("--by") { Description = "Who made it.", HelpName = "NAME" };

    private static readonly Option<string?> Title = new("--title")
    {
        Description = "The heading. Default: the design's name.",
        HelpName = "TEXT",
    };

    private static readonly Option<string?> Paper = new("--paper")
    {
        Description = "Of the packet: letter (the default) or a4.",
        HelpName = "letter|a4",
    };

    private static readonly Option<string[]> Photo = new("--photo")
    {
        Description = "A picture of the finished piece; place, time and camera are taken out of it. Can be repeated.",
        HelpName = "FILE",
    };

    /// <summary>Identifiers that can be chosen, in a sentence.</summary>
    internal static string Licenses => string.Join(", ", PublishLicense.All.Select(one => one.Id));

    public static Command Create()
    {
        var command = new Command(
            "publish",
            "Makes a plan that others can read, build and resize: a page that needs no network, drawings, a packet, tables, "
                + "the design. Exit status 0: done; 2: the design or an option is wrong, and nothing was written."
        )
        {
            Design,
            Output,
            Set,
            License,
            By,
            Title,
            Paper,
            Photo,
        };
        command.SetAction(parsed =>
            PublishRun.Run(
                parsed.GetRequiredValue(Design),
                parsed.GetRequiredValue(Output),
                parsed.GetValue(Set) ?? [],
                new PublishOptions(
                    parsed.GetValue(License),
                    parsed.GetValue(By) ?? "",
                    parsed.GetValue(Title) ?? "",
                    parsed.GetValue(Paper),
                    parsed.GetValue(Photo) ?? []
                )
            )
        );
        return command;
    }
}
