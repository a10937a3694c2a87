using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Wood;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Calculators;

/// <summary>What is asked of a glue-up.</summary>
internal sealed record GlueUpAsked(
    LengthUnit Unit,
    Length FinishedWidth,
    Length Finished,
    Length Oversize,
    Working<Length> Width,
    Working<Length> Length,
    Working<Length> Thickness,
    Working<Length> Board,
    EdgeJoint Joint,
    Working<Length> Tongue,
    Working<Length> Lost,
    Working<Length> Jointing,
    ClampPressure Pressure,
    Working<Length> Caul,
    int? Clamps,
    Working<double>? ClampForce,
    Working<double> Spread
) : Question(Unit)
{
    /// <summary>How many strips reach the width.</summary>
    public Working<int> Strips => field ??= GlueUp.Strips(Width, Board, Lost);

    public static GlueUpAsked Read(FormReader reader)
    {
        var (width, length, oversize) = (reader.Length("width"), reader.Length("length"), reader.Length("oversize"));
        var joint = Enum.Parse<EdgeJoint>(reader.Choice("joints"), true);
        var (tongue, jointing) = (reader.Given("Tongue", "tongue"), reader.Given("Jointing", "jointing"));
        var board = reader.Given("Board", "board");
        return new(
            reader.Unit,
            width,
            length,
            oversize,
            With("Rough width", "Width", width, oversize),
            With("Rough length", "Length", length, oversize),
            reader.Given("Thickness", "thickness"),
            Jointed(board, jointing),
            joint,
            tongue,
            joint == EdgeJoint.Tongue ? tongue : Working.Given("Joint", Measures.Length.Zero),
            jointing,
            Press(reader.Choice("species")),
            reader.Given("Caul", "caul"),
            reader.MaybeCount("clamps"),
            reader.MaybeGivenQuantity("Force of one clamp", "clamp-force", 0),
            reader.GivenQuantity("Spread", "spread", 1)
        );
    }

    private static Working<Length> Jointed(Working<Length> board, Working<Length> jointing) =>
        Working.Of(
            "Jointed board",
            board.Value - (jointing.Value * 2),
            "{board} − 2 × {jointing}",
            GlueUp.Jointing,
            ("board", board),
            ("jointing", jointing)
        );

    private static Working<Length> With(string name, string plain, Length finished, Length oversize) =>
        Working.Of(
            name,
            finished + oversize,
            "{finished} + {oversize}",
            Working.Geometry,
            ("finished", Working.Given(plain, finished)),
            ("oversize", Working.Given("Oversize", oversize))
        );

    private static ClampPressure Press(string species) =>
        species switch
        {
            "softwood" => ClampPressure.Softwood,
            "hardwood" => ClampPressure.Hardwood,
            _ => MaterialCatalogue.TryFindSpecies(species, out var wood)
                ? ClampPressure.For(wood.Kind, StrengthTable.Find(wood.Id)?.Gravity)
                : ClampPressure.Hardwood,
        };
}
