using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Making.Stored;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Weekends.Stored;

namespace ShopPlanner.Services.Tests.Documents;

/// <summary>One golden text of every version of every stored format. A text here never changes: a new version gets a new one.</summary>
public sealed class StoredDocumentTests
{
    private static readonly Guid One = Guid.Parse("019de805-fdc0-7466-ab67-362924ffdb06"),
        Two = Guid.Parse("019de805-fdc0-78ed-9d36-34447447fae4");

    private static readonly PlanOrder Order = new([One], [Two], [], UseRack: true, UseBin: false, Seconds: 20, Replaces: [Two])
    {
        CutAgain = true,
    };

    [Theory]
    [InlineData(
        """{"Projects":["019de805-fdc0-7466-ab67-362924ffdb06"],"Parts":["019de805-fdc0-78ed-9d36-34447447fae4"],"Stores":[],"UseRack":true,"UseBin":false,"Seconds":20,"Replaces":"019de805-fdc0-78ed-9d36-34447447fae4","CutAgain":true}"""
    )]
    [InlineData(OrderV1)]
    [InlineData(OrderV2)]
    [InlineData(OrderV3)]
    public void An_order_of_any_version_is_read(string text)
    {
        var read = PlanOrderDocument.Read(text);
        Assert.Equal(OrderV3, PlanOrderDocument.Write(read));
        Assert.Equal(
            (Order.Projects[0], Order.Parts!.Value[0], Order.Seconds, Order.Replaces[0]),
            (read.Projects[0], read.Parts!.Value[0], read.Seconds, read.Replaces.Single())
        );
    }

    [Fact]
    public void Weekends_of_any_version_are_read()
    {
        var read = WeekendDocument.Read(WeekendsV1);
        Assert.Equal(WeekendsV1Now, read.Write());
        Assert.Equal(WeekendsV2, WeekendDocument.Read(WeekendsV2).Write());
        Assert.Equal(
            ("8", One, new DateTime(2027, 3, 6, 15, 0, 0, DateTimeKind.Utc)),
            (read.Clamps, read.Wishes[0].Project, read.Kept["a/cut"])
        );
    }

    [Fact]
    public void A_comparison_of_any_version_is_read()
    {
        var read = PlanComparisonDocument.Read(ComparisonV1);
        Assert.Equal(ComparisonV1, PlanComparisonDocument.Write(read));
        var basket = Assert.Single(read.Baskets);
        Assert.Equal((15.96m, 50, "Corner lumber"), (basket.Total.Amount, basket.Minutes, basket.Stores.Single()));
        Assert.Throws<StoredDocumentException>(() => PlanComparisonDocument.Read("""{"alone":[],"baskets":[]}"""));
    }

    [Fact]
    public void An_order_that_took_no_plan_s_place_still_takes_none() =>
        Assert.Empty(
            PlanOrderDocument
                .Read(OrderV1.Replace("\"replaces\":\"019de805-fdc0-78ed-9d36-34447447fae4\"", "\"replaces\":null"))
                .Replaces
        );

    [Theory]
    [InlineData(
        """{"Name":"Stand","Stocks":{"B7":{"StockId":"B7","Name":"Pine 1x3, 2 ft","Tag":"B7","Store":null,"Tint":"#E6E4C6","Note":"knot"}},"Parts":{"PS A":{"PartId":"PS A","Mark":"A","Name":"Leg","ProjectId":"019de805-fdc0-7466-ab67-362924ffdb06","Project":"Stand"}},"Rows":{"PS A":"019de805-fdc0-78ed-9d36-34447447fae4"},"Pieces":{"B7":"019de805-fdc0-78ed-9d36-34447447fae4"},"Seen":{"x":"2026-05-02"},"Materials":{"pine-1x3":"Pine 1x3"},"Units":{"019de805-fdc0-7466-ab67-362924ffdb06":"Millimetre"},"CutBefore":{"PS A":2}}"""
    )]
    [InlineData(NamesV1)]
    public void Names_of_any_version_are_read(string text)
    {
        var read = PlanNamesDocument.Read(text);
        Assert.Equal(NamesV1, PlanNamesDocument.Write(read));
        Assert.Equal(("knot", Two, 2), (read.Stocks["B7"].Note, read.Rows["PS A"], read.CutBefore["PS A"]));
        Assert.Equal((LengthUnit.Millimetre, new DateOnly(2026, 5, 2)), (read.Units[One], read.Seen["x"]));
    }

    [Theory]
    [InlineData(
        """[{"Texts":{"Id":"019de805-fdc0-7466-ab67-362924ffdb06","Mark":"A","Name":"Leg","Material":"pine-1x3","Length":"17 1/4","Width":"","Quantity":"4","CanTurn":false,"Note":"round \"it\"","LongBy":"1","WideBy":"","Practice":"1"},"Position":1024,"Version":3}]"""
    )]
    [InlineData(RowsV1)]
    public void Rows_of_any_version_are_read(string text)
    {
        var row = Assert.Single(PartRowsDocument.Read(text));
        Assert.Equal(RowsV1, PartRowsDocument.Write([row]));
        Assert.Equal(("17 1/4", "1", 1024L, 3), (row.Texts.Length, row.Texts.LongBy, row.Position, row.Version));
    }

    [Theory]
    [InlineData("""{"height":"50","width":"30 1/2"}""")]
    [InlineData(TextsV1)]
    public void Texts_of_any_version_are_read(string text) =>
        Assert.Equal(TextsV1, TextsDocument.Write(TextsDocument.Read(text)));

    [Theory]
    [InlineData("""[{"Mark":"A","Row":"019de805-fdc0-7466-ab67-362924ffdb06"}]""", MadeV1Now)]
    [InlineData(MadeV1, MadeV1Now)]
    [InlineData(MadeV2, MadeV2)]
    public void Made_rows_of_any_version_are_read(string text, string now)
    {
        var row = Assert.Single(MadeRowsDocument.Read(text));
        Assert.Equal((One, now), (row.Row, MadeRowsDocument.Write([row])));
    }

    [Theory]
    [InlineData("""[{"Field":"stock","Value":"B7","Message":"is gone"}]""")]
    [InlineData(FaultsV1)]
    public void Faults_of_any_version_are_read(string text)
    {
        var fault = Assert.Single(FaultsDocument.Read(text));
        Assert.Equal((new Fault("stock", "B7", "is gone"), FaultsV1), (fault, FaultsDocument.Write([fault])));
    }

    [Fact]
    public void Bad_places_of_any_version_are_read()
    {
        var read = BadPlacesDocument.Read(BadPlacesV1);
        Assert.Equal([new(Length.FromInches(30), Length.Zero, Length.FromInches(2), Length.FromTicks(1))], read);
        Assert.Equal(BadPlacesV1, BadPlacesDocument.Write(read));
        Assert.Equal((0, ""), (BadPlacesDocument.Read("").Count, BadPlacesDocument.Write(BadPlaces.None)));
    }

    [Fact]
    public void Work_of_any_version_is_read()
    {
        var read = WorkDocument.Read(WorkV1);
        Assert.Equal(WorkV1Now, read.Write());
        var newest = WorkDocument.Read(WorkV2);
        Assert.Equal(WorkV2, newest.Write());
        Assert.Equal(("1:30", 40), (newest.Steps[0].Took!.Text, newest.Cutting[0].Time.Usual));
        var (step, own) = (Assert.Single(read.Steps), Assert.Single(read.Own));
        Assert.Equal(("groove:E:case", "Groove the rails", false), (step.Id, step.Title, step.IsSkipped));
        Assert.Equal(new DateTime(2026, 5, 2, 9, 30, 0, DateTimeKind.Utc), step.DoneUtc);
        Assert.Equal(["Fence to bit: 1/4″"], step.DoneAs);
        Assert.Equal(("Mine", "Slowly."), (step.Words!.Title, Assert.Single(step.Words.Says)));
        Assert.Equal(("own:1", "Toe kick", false), (own.Id, own.Title, own.IsFinish));
        Assert.Equal(["own:1", "groove:E:case"], read.Order);
        var choices = read.Choices.ToChoices();
        Assert.Equal(("pva", "paint", 3, 2.5), (choices.Glue, choices.Finish, choices.Coats, choices.Hours["recoat"]));
        Assert.Equal("2", read.Listed["Latex paint, 1 qt"]);
        Assert.Equal(WorkDocument.Empty.Write(), WorkDocument.Read(WorkDocument.Empty.Write()).Write());
    }

    [Theory]
    [InlineData("{", "is damaged")]
    [InlineData("""{"format":"shop-planner/work","version":2,"steps":[]}""", "is damaged")]
    [InlineData("""{"format":"shop-planner/work","version":1}""", "is damaged")]
    [InlineData("""{"format":"shop-planner/work","version":3}""", "version 3")]
    public void Work_that_cannot_be_read_is_never_taken_for_none(string text, string problem) =>
        Assert.Contains(problem, Assert.Throws<StoredDocumentException>(() => WorkDocument.Read(text)).Message);

    [Theory]
    [InlineData("{", "is damaged")]
    [InlineData("""{"format":"shop-planner/bad-places","version":1}""", "is damaged")]
    [InlineData("""{"format":"shop-planner/bad-places","version":1,"places":[{"x":1,"y":1,"dx":1}]}""", "is damaged")]
    [InlineData("""{"format":"shop-planner/bad-places","version":2,"places":[]}""", "version 2")]
    public void Bad_places_that_cannot_be_read_are_never_taken_for_none(string text, string problem) =>
        Assert.Contains(problem, Assert.Throws<StoredDocumentException>(() => BadPlacesDocument.Read(text)).Message);

    [Theory]
    [InlineData("", "is damaged")]
    [InlineData("{", "is damaged")]
    [InlineData("null", "is damaged")]
    [InlineData("[]", "is damaged")]
    [InlineData("""{"Projects":[]}""", "the member Parts is missing")]
    [InlineData("""{"format":"shop-planner/plan-order","version":1,"projects":[]}""", "is damaged")]
    [InlineData(
        """{"format":"shop-planner/plan-order","version":1,"projects":[],"parts":null,"stores":[],"useRack":true,"useBin":false,"seconds":20,"replaces":null}""",
        "cutAgain"
    )]
    [InlineData(
        """{"format":"shop-planner/plan-order","version":4,"projects":[]}""",
        "has version 4, and this program reads up to 3"
    )]
    public void A_damaged_or_newer_document_is_named(string text, string problem)
    {
        var refusal = Assert.Throws<StoredDocumentException>(() => PlanOrderDocument.Read(text));
        Assert.Contains(problem, refusal.Message);
        Assert.Contains("shop-planner/plan-order", refusal.Message);
    }

    [Fact]
    public void A_record_with_a_member_that_has_no_name_in_documents_is_not_stored()
    {
        var format = new StoredFormat<PlanOrder>("shop-planner/plan-order", node => node.AsObject())
        {
            Names = MemberNames.Of<PlanOrder>((nameof(PlanOrder.Projects), "projects")),
        };
        Assert.Contains("Parts", Assert.Throws<NotSupportedException>(() => format.Write(Order)).Message);
    }

    [Fact]
    public void A_dimension_may_be_named_as_a_member_of_the_header()
    {
        var texts = ImmutableSortedDictionary<string, string>.Empty.Add("format", "tall").Add("version", "2");
        Assert.Equal(texts, TextsDocument.Read(TextsDocument.Write(texts)));
        Assert.Equal(texts, TextsDocument.Read("""{"format":"tall","version":"2"}"""));
    }

    private const string OrderV1 =
        """{"format":"shop-planner/plan-order","version":1,"projects":["019de805-fdc0-7466-ab67-362924ffdb06"],"parts":["019de805-fdc0-78ed-9d36-34447447fae4"],"stores":[],"useRack":true,"useBin":false,"seconds":20,"replaces":"019de805-fdc0-78ed-9d36-34447447fae4","cutAgain":true}""";

    private const string OrderV2 =
        """{"format":"shop-planner/plan-order","version":2,"projects":["019de805-fdc0-7466-ab67-362924ffdb06"],"parts":["019de805-fdc0-78ed-9d36-34447447fae4"],"stores":[],"useRack":true,"useBin":false,"seconds":20,"replaces":["019de805-fdc0-78ed-9d36-34447447fae4"],"cutAgain":true}""";

    private const string OrderV3 =
        """{"format":"shop-planner/plan-order","version":3,"projects":["019de805-fdc0-7466-ab67-362924ffdb06"],"parts":["019de805-fdc0-78ed-9d36-34447447fae4"],"stores":[],"useRack":true,"useBin":false,"seconds":20,"replaces":["019de805-fdc0-78ed-9d36-34447447fae4"],"cutAgain":true,"fromHand":[],"spares":{},"countTrips":false,"oneStore":false}""";

    // Documents in a document are texts, so that each of them is brought up to date by its own format.
    private const string ComparisonV1 =
        """{"format":"shop-planner/plan-comparison","version":1,"alone":[],"baskets":[{"stores":["Corner lumber"],"wood":129600,"trips":30000,"minutes":50,"missing":0}]}""";

    private const string NamesV1 =
        """{"format":"shop-planner/plan-names","version":1,"name":"Stand","stocks":{"B7":{"name":"Pine 1x3, 2 ft","tag":"B7","store":null,"tint":"#E6E4C6","note":"knot"}},"parts":{"PS A":{"mark":"A","name":"Leg","project":"019de805-fdc0-7466-ab67-362924ffdb06","projectName":"Stand"}},"rows":{"PS A":"019de805-fdc0-78ed-9d36-34447447fae4"},"pieces":{"B7":"019de805-fdc0-78ed-9d36-34447447fae4"},"pricesSeen":{"x":"2026-05-02"},"materials":{"pine-1x3":"Pine 1x3"},"units":{"019de805-fdc0-7466-ab67-362924ffdb06":"mm"},"cutBefore":{"PS A":2}}""";

    private const string RowsV1 =
        """{"format":"shop-planner/part-rows","version":1,"rows":[{"id":"019de805-fdc0-7466-ab67-362924ffdb06","mark":"A","name":"Leg","material":"pine-1x3","length":"17 1/4","width":"","quantity":"4","canTurn":false,"note":"round \"it\"","longBy":"1","wideBy":"","practice":"1","position":1024,"version":3}]}""";

    private const string TextsV1 = """{"format":"shop-planner/texts","version":1,"texts":{"height":"50","width":"30 1/2"}}""";

    private const string MadeV1 =
        """{"format":"shop-planner/made-rows","version":1,"rows":[{"mark":"A","row":"019de805-fdc0-7466-ab67-362924ffdb06"}]}""";

    private const string MadeV1Now =
        """{"format":"shop-planner/made-rows","version":2,"rows":[{"mark":"A","row":"019de805-fdc0-7466-ab67-362924ffdb06","said":[]}]}""";

    private const string MadeV2 =
        """{"format":"shop-planner/made-rows","version":2,"rows":[{"mark":"A","row":"019de805-fdc0-7466-ab67-362924ffdb06","said":[{"length":"438.15 mm","name":"Leg"}]}]}""";

    private const string BadPlacesV1 =
        """{"format":"shop-planner/bad-places","version":1,"places":[{"x":243840,"y":0,"dx":16256,"dy":1}]}""";

    private const string WorkV1 =
        """{"format":"shop-planner/work","version":1,"choices":{"glue":"pva","finish":"paint","edges":null,"uses":["food"],"pinsBefore":true,"hingesBefore":true,"panelEdgesBefore":false,"doorsAfterCase":true,"cleatsFirst":false,"startGrit":80,"endGrit":null,"coats":3,"hours":{"recoat":2.5}},"steps":[{"id":"groove:E:case","title":"Groove the rails","done":"2026-05-02T09:30:00Z","doneAs":["Fence to bit: 1/4″"],"skipped":false,"note":"Ask Sam","words":{"title":"Mine","says":["Slowly."],"instead":["Groove the rails"]},"measured":{"width 1":"19 7/8"}}],"own":[{"id":"own:1","finish":false,"title":"Toe kick","says":[]}],"order":["own:1","groove:E:case"],"listed":{"Latex paint, 1 qt":"2"}}""";

    private const string WorkV1Now =
        """{"format":"shop-planner/work","version":2,"choices":{"glue":"pva","finish":"paint","edges":null,"uses":["food"],"pinsBefore":true,"hingesBefore":true,"panelEdgesBefore":false,"doorsAfterCase":true,"cleatsFirst":false,"startGrit":80,"endGrit":null,"coats":3,"hours":{"recoat":2.5}},"steps":[{"id":"groove:E:case","title":"Groove the rails","done":"2026-05-02T09:30:00Z","doneAs":["Fence to bit: 1/4″"],"skipped":false,"note":"Ask Sam","words":{"title":"Mine","says":["Slowly."],"instead":["Groove the rails"]},"measured":{"width 1":"19 7/8"},"took":null}],"own":[{"id":"own:1","finish":false,"title":"Toe kick","says":[]}],"order":["own:1","groove:E:case"],"listed":{"Latex paint, 1 qt":"2"},"cutting":[]}""";

    private const string WorkV2 =
        """{"format":"shop-planner/work","version":2,"choices":{"glue":"pva","finish":"paint","edges":null,"uses":["food"],"pinsBefore":true,"hingesBefore":true,"panelEdgesBefore":false,"doorsAfterCase":true,"cleatsFirst":false,"startGrit":80,"endGrit":null,"coats":3,"hours":{"recoat":2.5}},"steps":[{"id":"groove:E:case","title":"Groove the rails","done":"2026-05-02T09:30:00Z","doneAs":["Fence to bit: 1/4″"],"skipped":false,"note":"Ask Sam","words":{"title":"Mine","says":["Slowly."],"instead":["Groove the rails"]},"measured":{"width 1":"19 7/8"},"took":{"text":"1:30","kind":"groove","usual":45}}],"own":[{"id":"own:1","finish":false,"title":"Toe kick","says":[]}],"order":["own:1","groove:E:case"],"listed":{"Latex paint, 1 qt":"2"},"cutting":[{"id":"0198","when":"2026-05-02T11:30:00Z","time":{"text":"50","kind":"cut","usual":40}}]}""";

    private const string WeekendsV1 =
        """{"format":"shop-planner/weekends","version":1,"hours":{"Saturday":"9:00-17:00"},"daysOff":"2027-03-06","extraHours":"","zone":"America/Chicago","people":"1","clamps":"8","drying":"","projects":[{"project":"019de805-fdc0-7466-ab67-362924ffdb06","priority":2,"due":"2027-04-01","leftOut":false}],"moved":{"a/cut":"2027-03-06T15:00:00Z"},"kept":{"a/cut":"2027-03-06T15:00:00Z"}}""";

    private const string WeekendsV1Now =
        """{"format":"shop-planner/weekends","version":2,"hours":{"Saturday":"9:00-17:00"},"daysOff":"2027-03-06","extraHours":"","zone":"America/Chicago","people":"1","clamps":"8","drying":"","projects":[{"project":"019de805-fdc0-7466-ab67-362924ffdb06","priority":2,"due":"2027-04-01","leftOut":false}],"moved":{"a/cut":"2027-03-06T15:00:00Z"},"kept":{"a/cut":"2027-03-06T15:00:00Z"},"begins":{},"feed":""}""";

    private const string WeekendsV2 =
        """{"format":"shop-planner/weekends","version":2,"hours":{"Saturday":"9:00-17:00"},"daysOff":"2027-03-06","extraHours":"","zone":"America/Chicago","people":"1","clamps":"8","drying":"","projects":[{"project":"019de805-fdc0-7466-ab67-362924ffdb06","priority":2,"due":"2027-04-01","leftOut":false}],"moved":{"a/cut":"2027-03-06T15:00:00Z"},"kept":{"a/cut":"2027-03-06T15:00:00Z"},"begins":{"a/cut":"2027-03-06T15:00:00Z"},"feed":"0123456789abcdef0123456789abcdef"}""";

    private const string FaultsV1 =
        """{"format":"shop-planner/faults","version":1,"faults":[{"field":"stock","value":"B7","message":"is gone"}]}""";
}
