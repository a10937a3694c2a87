using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Workings;

/// <summary>Prices and banding by plain arithmetic.</summary>
public sealed class BuyingTests
{
    [
        Theory,
        InlineData("6.50", "1", "7 1/2", "8 ft", 32.50),
        InlineData("9.25", "2", "6", "7 ft", 64.75),
        InlineData("8", "1 1/4", "5 1/2", "10 ft", 45.83)
    ]
    public void Boards_by_the_board_foot(string price, string thickness, string width, string length, double all) =>
        Assert.Equal(
            all,
            Asked.Number(
                "price",
                "Price of the parts",
                "price=" + price,
                "thickness=" + thickness,
                "width=" + width,
                "length=" + length
            ),
            0.005
        );

    [Fact]
    public void A_sheet_at_78_40_is_2_45_for_a_square_foot_and_a_part_its_share()
    {
        string[] given = ["price=78.40", "per=sheet", "width=23", "length=30"];
        Assert.Equal(2.45, Asked.Number("price", "Price of a square foot", given), 6);
        Assert.Equal(11.74, Asked.Number("price", "Price of one part", given), 0.005);
    }

    // 13.1 board feet: 1 in by 12 in by 157.2 in.
    [Theory, InlineData("added", 15.72), InlineData("share", 16.375)]
    public void Twenty_percent_of_waste_means_two_things(string counted, double bought) =>
        Assert.Equal(
            bought,
            Asked.Number("price", "Amount to buy", "price=1", "width=12", "length=157.2", "waste=20", "counted=" + counted),
            0.001
        );

    // 1 m³ = 423.776 board feet.
    [Fact]
    public void Forty_five_for_a_board_foot_are_19_070_for_a_cubic_meter_and_back()
    {
        Assert.Equal(19_070, Asked.Number("price", "Price of a cubic meter", "price=45", "width=12", "length=12"), 0.5);
        Assert.Equal(
            45,
            Asked.Number("price", "Price of a board foot", "price=19069.92", "per=cubic-meter", "width=12", "length=12"),
            0.001
        );
    }

    // 1 m² = 10.7639 ft².
    [Fact]
    public void A_square_meter_holds_10_764_square_feet() =>
        Assert.Equal(
            1,
            Asked.Number("price", "Price of a square foot", "price=10.7639", "per=square-meter", "width=12", "length=12"),
            0.0001
        );

    [Fact]
    public void Prices_have_two_decimals() =>
        Assert.Equal(
            "32.50",
            Asked.Result("price", "Price of the parts", "price=6.5", "width=7 1/2", "length=8 ft").Figure.Text(LengthUnit.Inch)
        );

    [
        Theory,
        InlineData("30", "12", 2, "both", "none", "1", 10, 136.4),
        InlineData("30", "23 3/4", 1, "one", "both", "1", 5, 84.525),
        InlineData("600 mm", "300 mm", 3, "both", "none", "40 mm", 10, 166.299)
    ]
    public void Banding(
        string length,
        string width,
        int count,
        string longs,
        string shorts,
        string trim,
        int waste,
        double band
    ) => Assert.Equal(band, Asked.Number("edge-band", "Banding", Given(length, width, count, longs, shorts, trim, waste)), 0.001);

    // Faces of a door of 15 by 24 in and a table top of 24 by 48 in, both sides: 720 and 2,304 in².
    [Theory, InlineData("24", "15", 5.0), InlineData("48", "24", 16.0)]
    public void Veneer_for_both_faces(string length, string width, double squareFeet) =>
        Assert.Equal(
            squareFeet,
            Asked.Number("edge-band", "Veneer", "length=" + length, "width=" + width, "faces=2", "long=0", "waste=0"),
            0.001
        );

    [Theory, InlineData("12 ft", 1), InlineData("11 ft", 2)]
    public void Rolls_are_bought_whole(string roll, int rolls) =>
        Assert.Equal(
            rolls,
            Asked.Number("edge-band", "Rolls to buy", "length=30", "width=12", "count=2", "long=2", "roll=" + roll)
        );

    [Fact]
    public void Nothing_to_band_is_refused() =>
        Assert.Equal("long", Assert.Single(Asked.Run("edge-band", "length=30", "width=12", "long=0").Faults).Field);

    private static string[] Given(string length, string width, int count, string longs, string shorts, string trim, int waste)
    {
        string Sides(string word) =>
            word switch
            {
                "none" => "0",
                "one" => "1",
                _ => "2",
            };
        return
        [
            "length=" + length,
            "width=" + width,
            $"count={count}",
            "long=" + Sides(longs),
            "short=" + Sides(shorts),
            "trim=" + trim,
            $"waste={waste}",
        ];
    }
}
