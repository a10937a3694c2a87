namespace ShopPlanner.Services.Access;

/// <summary>A browser that is signed in.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">What the owner calls it.</param>
/// <param name="Role">What it may do.</param>
/// <param name="SinceUtc">When it was signed in or paired.</param>
public sealed record AccessDevice(Guid Id, string Name, AccessRole Role, DateTime SinceUtc)
{
    /// <summary>When it last asked for something; null where it has not since the program started.</summary>
    public DateTime? SeenUtc { get; init; }
}

/// <summary>A plan that whoever has its link may read.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Name">The plan's name when it was shared.</param>
/// <param name="EndsUtc">When the link ends.</param>
public sealed record SharedPlan(Guid Id, Guid Plan, string Name, DateTime EndsUtc);

/// <summary>Who may open the shop.</summary>
/// <param name="Owner">The owner's name; null while there is none.</param>
/// <param name="Devices">The browsers that are signed in, the owner's first, each kind by name.</param>
/// <param name="Shares">The links that have not ended, the one that ends first at the top.</param>
public sealed record AccessView(string? Owner, IReadOnlyList<AccessDevice> Devices, IReadOnlyList<SharedPlan> Shares);

/// <summary>A browser that was just signed in.</summary>
/// <param name="Device">The browser.</param>
/// <param name="Token">Its secret, for it alone: it is kept nowhere else.</param>
public sealed record SignedIn(AccessDevice Device, string Token);

/// <summary>A code that pairs one browser.</summary>
/// <param name="Code">Ten letters and digits in two groups.</param>
/// <param name="Role">What the browser may do.</param>
/// <param name="Name">What it will be called.</param>
/// <param name="EndsUtc">When the code ends, used or not.</param>
public sealed record PairingOffer(string Code, AccessRole Role, string Name, DateTime EndsUtc);

/// <summary>A plan that was just shared.</summary>
/// <param name="Share">The share.</param>
/// <param name="Token">The secret part of its link: it is kept nowhere else.</param>
public sealed record ShareOffer(SharedPlan Share, string Token);
