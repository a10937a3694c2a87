using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Web.Shared;

/// <summary>
/// Every address inside the program. What a person sees is in the address; pages are found by these and no other way.
/// </summary>
public static class Links
{
    /// <summary>Home.</summary>
    public const string Home = "/";

    /// <summary>All projects.</summary>
    public const string Projects = "/projects";

    /// <summary>Deleted projects.</summary>
    public const string Trash = "/projects/trash";

    /// <summary>The rack and the bin.</summary>
    public const string Stock = "/rack-and-bin";

    /// <summary>All stores.</summary>
    public const string Stores = "/stores";

    /// <summary>All cut plans.</summary>
    public const string Plans = "/plans";

    /// <summary>Plans that can be cut.</summary>
    public const string Bench = "/bench";

    /// <summary>The shop's book as a table of text.</summary>
    public const string BookCsv = "/book.csv";

    /// <summary>All lines of the book, as the key of a group.</summary>
    public const string WholeBook = "all";

    /// <summary>Shop math.</summary>
    public const string Workings = "/workings";

    /// <summary>Designs to start from.</summary>
    public const string Designs = "/designs";

    /// <summary>What happens when.</summary>
    public const string Weekends = "/weekends";

    /// <summary>The schedule as a calendar.</summary>
    public const string WeekendsCalendar = "/weekends/schedule.ics";

    /// <summary>The schedule at its private address, for calendars that subscribe to it.</summary>
    public const string WeekendsFeed = "/weekends/feed/";

    /// <summary>The shop's settings.</summary>
    public const string Shop = "/shop";

    /// <summary>How the shop's data is.</summary>
    public const string Condition = "/shop/condition";

    /// <summary>Backups, in Setup.</summary>
    public const string Backups = "/shop#backups";

    /// <summary>Everything that goes out to files and comes in from them.</summary>
    public const string Files = "/shop/files";

    /// <summary>The whole shop as one file.</summary>
    public const string Archive = "/shop/archive.zip";

    /// <summary>Looking for anything in the shop.</summary>
    /// <param name="text">What is looked for.</param>
    public static string Search(string? text = null) => QueryHelpers.AddQueryString("/search", Given(("q", text)));

    /// <summary>The shop's book.</summary>
    /// <param name="by">What it is put together by; the month where left out.</param>
    /// <param name="figure">The figure that is drawn; money where left out.</param>
    /// <param name="key">The month, project or store whose lines are shown; none where left out.</param>
    public static string Book(string? by = null, string? figure = null, string? key = null) =>
        QueryHelpers.AddQueryString("/book", Given(("by", by), ("of", figure), ("key", key)));

    /// <summary>A project's parts; past the first screenful when <paramref name="fromRow"/> says so.</summary>
    public static string Parts(Guid project, int fromRow = 0) =>
        fromRow == 0 ? $"{Projects}/{project}/parts" : $"{Projects}/{project}/parts?from={Number(fromRow)}";

    /// <summary>A project's parts as a table of text.</summary>
    public static string PartsCsv(Guid project) => $"{Projects}/{project}/parts.csv";

    /// <summary>What a project needs bought.</summary>
    public static string Buy(Guid project) => $"{Projects}/{project}/buy";

    /// <summary>Lists to shop by.</summary>
    public const string Shopping = "/shopping";

    /// <summary>A plan's shopping list for a phone at the store.</summary>
    public static string ShoppingList(Guid plan) => $"{Shopping}/{plan}";

    /// <summary>The shopping list for a phone of a project without a plan.</summary>
    public static string ShoppingListOf(Guid project) => $"{Shopping}/project/{project}";

    /// <summary>The cuts of a project's plan.</summary>
    public static string Cuts(Guid project) => $"{Projects}/{project}/cuts";

    /// <summary>How a project's piece is put together.</summary>
    public static string Build(Guid project) => $"{Projects}/{project}/build";

    /// <summary>How a project's piece is finished.</summary>
    public static string Finish(Guid project) => $"{Projects}/{project}/finish";

    /// <summary>A card of the first setup; the one to go on with where none is named.</summary>
    public static string Welcome(string? card = null) => card is null ? "/welcome" : $"/welcome/{card}";

    /// <summary>A project's idea.</summary>
    /// <param name="project">The project.</param>
    /// <param name="view">How it is looked at; the usual way where left out.</param>
    /// <param name="part">Letter of the part that is chosen.</param>
    public static string Idea(Guid project, string? view = null, string? part = null) =>
        QueryHelpers.AddQueryString($"{Projects}/{project}/idea", Given(("view", view), ("part", part)));

    /// <summary>A file that an idea gives.</summary>
    public static string IdeaFile(Guid project, string name) => $"{Projects}/{project}/idea/{name}";

    /// <summary>Choosing a design for a project.</summary>
    public static string DesignsFor(Guid project) => $"{Designs}?project={project}";

    /// <summary>The rack and the bin, narrowed.</summary>
    public static string StockOf(string? place, string? material, string? find) =>
        QueryHelpers.AddQueryString(Stock, Given(("place", place), ("material", material), ("find", find)));

    /// <summary>The rack and the bin as a table of text.</summary>
    public const string StockCsv = Stock + "/stock.csv";

    /// <summary>A design as a file.</summary>
    public static string DesignFile(string key) => $"{Designs}/{key}/design.json";

    /// <summary>Publishing a project.</summary>
    /// <param name="project">The project.</param>
    /// <param name="choices">What was chosen, by name; what is left out is as usual.</param>
    public static string Publish(Guid project, IEnumerable<(string Name, string? Value)>? choices = null) =>
        QueryHelpers.AddQueryString($"{Projects}/{project}/publish", Given([.. choices ?? []]));

    /// <summary>A project's publication as one file.</summary>
    public static string PublishZip(Guid project, IEnumerable<(string Name, string? Value)> choices) =>
        QueryHelpers.AddQueryString($"{Projects}/{project}/publish.zip", Given([.. choices]));

    /// <summary>The history of a piece on hand.</summary>
    public static string StockPiece(Guid piece) => $"{Stock}/{piece}";

    /// <summary>A store's price list.</summary>
    public static string Store(Guid store) => $"{Stores}/{store}";

    /// <summary>Choosing what to plan.</summary>
    /// <param name="projects">Ticked to begin with.</param>
    /// <param name="replaces">The plan whose order the form begins with; where it can still be cut, the new one takes its
    /// place.</param>
    public static string NewPlan(IEnumerable<Guid>? projects = null, Guid? replaces = null) =>
        QueryHelpers.AddQueryString(
            Plans + "/new",
            Given(("projects", projects is null ? null : string.Join(',', projects)), ("replaces", replaces?.ToString()))
        );

    /// <summary>A planning run.</summary>
    public static string PlanRun(Guid job) => $"{Plans}/runs/{job}";

    /// <summary>A plan: its cuts, or another side of it.</summary>
    public static string Plan(Guid plan, string? tab = null) => tab is null ? $"{Plans}/{plan}" : $"{Plans}/{plan}/{tab}";

    /// <summary>A project of a plan as it would be planned alone.</summary>
    public static string PlanAlone(Guid plan, Guid project) => $"{Plan(plan, "together")}?alone={project}";

    /// <summary>A plan's packet.</summary>
    public static string Packet(Guid plan, PaperSize paper) =>
        $"{Plans}/{plan}/packet.pdf?paper={(paper == PaperSize.A4 ? "a4" : "letter")}";

    /// <summary>A plan's request or the plan itself as a document.</summary>
    public static string PlanDocument(Guid plan, bool answer) => $"{Plans}/{plan}/{(answer ? "plan" : "request")}.json";

    /// <summary>A price list as a table of text.</summary>
    public static string PriceCsv(Guid store) => $"{Stores}/{store}/prices.csv";

    /// <summary>A plan at the bench; the board or sheet with that number, or the next one.</summary>
    public static string BenchPlan(Guid plan, int? number = null) =>
        number is { } n ? $"{Bench}/{plan}/{Number(n)}" : $"{Bench}/{plan}";

    /// <summary>Takes what was marked at the bench.</summary>
    public const string BenchCommands = Bench + "/commands";

    /// <summary>How a tablet comes to trust this computer, so that the bench opens without a network.</summary>
    public const string BenchTrust = Bench + "/trust";

    /// <summary>The certificate that a tablet trusts.</summary>
    public const string BenchAuthority = Bench + "/authority.crt";

    /// <summary>What the addresses of steps at the bench begin with.</summary>
    public const string AllBenchSteps = Bench + "/steps/";

    /// <summary>A project's steps at the bench; those of one part where its mark is given.</summary>
    public static string BenchSteps(Guid project, string? part = null) => WithQuery($"{AllBenchSteps}{project}", ("part", part));

    /// <summary>The form for labels.</summary>
    public const string LabelsPage = "/paper/labels";

    /// <summary>Labels as a file.</summary>
    public const string LabelsFile = "/paper/labels.pdf";

    /// <summary>Labels of a plan's parts, of a project's, or of all offcuts.</summary>
    public static string Labels(Guid? plan = null, Guid? project = null) =>
        WithQuery(LabelsPage, ("plan", plan?.ToString()), ("project", project?.ToString()));

    /// <summary>The full-size templates of a project.</summary>
    public static string TemplatesPage(Guid project) => $"/paper/templates/{project}";

    /// <summary>Templates as a file.</summary>
    /// <param name="project">The project.</param>
    /// <param name="paper">On which paper.</param>
    /// <param name="pull">From hole to hole of drawer pulls, as typed; null for the usual.</param>
    /// <param name="id">Which one; null for all.</param>
    public static string TemplatesFile(Guid project, PaperSize paper, string? pull, string? id) =>
        WithQuery(
            $"{TemplatesPage(project)}/templates.pdf",
            ("paper", paper == PaperSize.A4 ? "a4" : "letter"),
            ("pull", pull),
            ("only", id)
        );

    /// <summary>An address with what is given behind the question mark; what is empty is left out.</summary>
    public static string WithQuery(string address, params (string Key, string? Value)[] values) =>
        QueryHelpers.AddQueryString(address, Given(values));

    /// <summary>A board or sheet at the bench, with what to write on the leftovers of the one before it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="number">The board's or sheet's number.</param>
    /// <param name="finished">The number of the one that was finished.</param>
    public static string BenchAfter(Guid plan, int number, int finished) =>
        $"{BenchPlan(plan, number)}?finished={Number(finished)}";

    /// <summary>A plan's cuts at the bench by setting, over all boards and sheets.</summary>
    public static string BenchSettings(Guid plan) => $"{Bench}/{plan}/settings";

    /// <summary>Measuring what a board or sheet leaves.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="number">The board's or sheet's number.</param>
    /// <param name="allCutsMade">True where every cut was made, ticked or not.</param>
    public static string BenchFinish(Guid plan, int number, bool allCutsMade = false) =>
        $"{Bench}/{plan}/{Number(number)}/finish{(allCutsMade ? "?all-made=true" : "")}";

    /// <summary>Saying that a cut went wrong.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="number">The board's or sheet's number.</param>
    /// <param name="cut">The cut's number.</param>
    public static string BenchWrong(Guid plan, int number, int cut) => $"{Bench}/{plan}/{Number(number)}/wrong/{Number(cut)}";

    /// <summary>The cuts of a plan that went wrong, and what was done about them.</summary>
    public static string BenchWrongCuts(Guid plan) => $"{Bench}/{plan}/wrong";

    /// <summary>The bin at the bench.</summary>
    public const string BenchBin = Bench + "/bin";

    /// <summary>The bin at the bench, searched.</summary>
    /// <param name="material">Id of the material; null for any.</param>
    /// <param name="length">The least length, as typed.</param>
    /// <param name="width">The least width, as typed.</param>
    /// <param name="thickness">The thickness, as typed.</param>
    public static string BenchBinOf(string? material, string? length, string? width, string? thickness) =>
        QueryHelpers.AddQueryString(
            BenchBin,
            Given(("material", material), ("length", length), ("width", width), ("thickness", thickness))
        );

    /// <summary>A working, filled in.</summary>
    /// <param name="form">Its name.</param>
    /// <param name="given">Texts by key.</param>
    /// <param name="unit">Of lengths without a suffix; left out where nothing is filled in.</param>
    /// <param name="project">Whose parts are added up; null for none.</param>
    public static string Working(
        string form,
        IReadOnlyDictionary<string, string>? given = null,
        LengthUnit? unit = null,
        Guid? project = null
    )
    {
        var texts = (given ?? new Dictionary<string, string>()).OrderBy(pair => pair.Key, StringComparer.Ordinal);
        var sign = unit switch
        {
            LengthUnit.Inch => "in",
            LengthUnit.Millimetre => "mm",
            _ => null,
        };
        return QueryHelpers.AddQueryString(
            $"{Workings}/{form}",
            Given([.. texts.Select(pair => (pair.Key, (string?)pair.Value)), ("unit", sign), ("project", project?.ToString())])
        );
    }

    private static Dictionary<string, string?> Given(params (string Key, string? Value)[] values) =>
        values.Where(pair => !string.IsNullOrEmpty(pair.Value)).ToDictionary(pair => pair.Key, pair => pair.Value);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
