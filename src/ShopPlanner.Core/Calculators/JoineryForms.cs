using System.Collections.Immutable;

namespace ShopPlanner.Core.Calculators;

/// <summary>Grooves, drawers, glue-ups.</summary>
internal static class JoineryForms
{
    public static readonly ImmutableArray<WorkingForm> All = [.. GrooveForms.All, .. DrawerForms.All, .. GlueUpForms.All];
}
