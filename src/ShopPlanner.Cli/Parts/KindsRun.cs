using ShopPlanner.Core.Designs.Listing;

namespace ShopPlanner.Cli.Parts;

/// <summary>One run of <c>parts --kinds</c>: lists all kinds that a design can name.</summary>
internal static class KindsRun
{
    /// <summary>The exit status.</summary>
    public static int Run(bool asJson, string? to)
    {
        TextOutput.At(to, "list", "-", "design").Write(asJson ? KindJson.Write() : KindText.Write());
        return ExitStatus.Done;
    }
}
