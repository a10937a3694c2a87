using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Packets.Labels;
using ShopPlanner.Services.Paper;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Paper;

/// <summary>What is asked of labels, as an address holds it.</summary>
/// <param name="Plan">Id of a plan; null for none.</param>
/// <param name="Project">Id of a project; null for none.</param>
/// <param name="Sheet">Key of the sheet; null where nothing was asked yet.</param>
/// <param name="Start">Number of the first label.</param>
/// <param name="Only">Marks.</param>
/// <param name="Right">Nudge to the right.</param>
/// <param name="Down">Nudge down.</param>
/// <param name="Codes"><c>no</c> for labels without codes.</param>
internal sealed record LabelQuery(
    string? Plan,
    string? Project,
    string? Sheet,
    string? Start,
    string? Only,
    string? Right,
    string? Down,
    string? Codes
)
{
    private const char Between = '~';

    /// <summary>The cookie that keeps sheet and nudge: they belong to the printer that stands beside this device.</summary>
    public const string Cookie = "shop-planner-labels";

    /// <summary>What is labeled; null where an id is none.</summary>
    public LabelSource? Source =>
        (Text(Plan), Text(Project)) switch
        {
            (null, null) => LabelSource.Bin,
            ({ } plan, _) => Guid.TryParse(plan, out var id) ? new(id, null) : null,
            (_, { } project) => Guid.TryParse(project, out var id) ? new(null, id) : null,
        };

    /// <summary>Whether parts get codes that lead to their steps at the bench.</summary>
    public bool HasCodes => Codes != "no";

    /// <summary>How they are printed, or what is wrong with it.</summary>
    public (LabelPrint? Print, ImmutableArray<Fault> Faults) Read(LengthUnit unit) =>
        LabelPrint.Read(Sheet, Start, Right, Down, unit);

    /// <summary>The address of the page with all of it.</summary>
    public string PageLink =>
        Links.WithQuery(
            Links.LabelsPage,
            ("plan", Plan),
            ("project", Project),
            ("sheet", Sheet),
            ("start", Start),
            ("only", Only),
            ("right", Right),
            ("down", Down),
            ("codes", Codes)
        );

    /// <summary>Sheet and nudge for the cookie.</summary>
    public string Kept => string.Join(Between, Sheet, Right, Down);

    /// <summary>The same with the sheet and nudge that were used last, where nothing is asked yet.</summary>
    /// <param name="kept">The cookie's text.</param>
    public LabelQuery With(string? kept) =>
        Sheet is null && kept?.Split(Between) is [var sheet, var right, var down] && LabelSheets.Find(sheet) is not null
            ? this with
            {
                Sheet = sheet,
                Right = right,
                Down = down,
            }
            : this;

    private static string? Text(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
