using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace ShopPlanner.Core.Calculators;

/// <summary>All forms, by subject.</summary>
public static class WorkingForms
{
    /// <summary>In the order of the list that people see.</summary>
    public static readonly ImmutableArray<WorkingForm> All =
    [
        SizeCalculator.Form,
        BoardFootCalculator.Form,
        PriceCalculator.Form,
        ConvertCalculator.Form,
        MoistureCalculator.Form,
        MovementCalculator.Form,
        WeightCalculator.Form,
        MortiseCalculator.Form,
        DadoCalculator.Form,
        DoorCalculator.Form,
        GrooveCalculator.Form,
        DrawerCalculator.Form,
        FrontsCalculator.Form,
        SlideCalculator.Form,
        TopCalculator.Form,
        GlueUpCalculator.Form,
        SagCalculator.Form,
        SlatCalculator.Form,
        StabilityCalculator.Form,
        HingeCalculator.Form,
        ButtHingeCalculator.Form,
        CupOverlayCalculator.Form,
        SpacingCalculator.Form,
        PinCalculator.Form,
        ScrewCalculator.Form,
        HoldingCalculator.Form,
        WallCalculator.Form,
        DowelCalculator.Form,
        SquareCalculator.Form,
        TaperCalculator.Form,
        MiterCalculator.Form,
        ArcCalculator.Form,
        KerfCalculator.Form,
        FiveCutCalculator.Form,
        ParallelCalculator.Form,
        CoatCalculator.Form,
        BandCalculator.Form,
    ];

    /// <summary>The form with this name.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out WorkingForm? form) =>
        (form = All.FirstOrDefault(one => one.Name == name)) is not null;
}
