using System.Collections.Immutable;

namespace ShopPlanner.Services.Access;

/// <summary>The owner as kept.</summary>
/// <param name="Name">The name.</param>
/// <param name="Password">The password's hash (<see cref="Passwords"/>).</param>
internal sealed record KeptOwner(string Name, string Password);

/// <summary>A device as kept.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Role">What it may do.</param>
/// <param name="Secret">SHA-256 of its secret.</param>
/// <param name="SinceUtc">When it was signed in.</param>
internal sealed record KeptDevice(Guid Id, string Name, AccessRole Role, string Secret, DateTime SinceUtc);

/// <summary>A share as kept.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Name">The plan's name.</param>
/// <param name="Secret">SHA-256 of the link's secret part.</param>
/// <param name="EndsUtc">When it ends.</param>
internal sealed record KeptShare(Guid Id, Guid Plan, string Name, string Secret, DateTime EndsUtc)
{
    /// <summary>Without its secret.</summary>
    public SharedPlan View() => new(Id, Plan, Name, EndsUtc);
}

/// <summary>What <c>access.json</c> holds.</summary>
/// <param name="Format">1; a program reads no number that it does not know.</param>
/// <param name="Owner">Null while there is none.</param>
/// <param name="Devices">Those that are signed in.</param>
/// <param name="Shares">Those that were not taken back.</param>
internal sealed record AccessDocument(
    int Format,
    KeptOwner? Owner,
    ImmutableArray<KeptDevice> Devices,
    ImmutableArray<KeptShare> Shares
)
{
    public const int ThisFormat = 1;

    public static AccessDocument Empty { get; } = new(ThisFormat, null, [], []);
}
