using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Access;

/// <summary>
/// Who may open the shop. There is one owner with a password; every browser that is signed in, the owner's too, is a device with
/// a secret of its own, so that each is listed and can be signed out alone. What is kept lies in a file of its own beside the
/// database: it is in no backup and no archive, and a restore brings no device back.
/// </summary>
public interface IAccessService
{
    /// <summary>Raised, on any thread, when somebody was signed in or out, or the owner changed.</summary>
    event Action? Changed;

    /// <summary>Whether the shop has an owner.</summary>
    bool HasOwner { get; }

    /// <summary>The code that makes an owner, for the console of this computer alone; null once there is one.</summary>
    string? OwnerCode { get; }

    /// <summary>Returns who may open the shop.</summary>
    AccessView Get();

    /// <summary>Returns the device with a secret, and notes that it was seen; null where there is none.</summary>
    /// <param name="token">The secret as the browser sent it.</param>
    AccessDevice? Find(string token);

    /// <summary>Whether a device is still signed in.</summary>
    bool IsIn(Guid device);

    /// <summary>Makes the owner and signs the owner's browser in. Of many that try at once, one succeeds.</summary>
    /// <param name="code">The code on the console.</param>
    /// <param name="owner">The owner's name and password.</param>
    /// <param name="device">What the browser is called.</param>
    /// <param name="from">Where the request came from, for slowing down whoever guesses.</param>
    Outcome<SignedIn> BecomeOwner(string code, OwnerEntry owner, string device, string from);

    /// <summary>Signs a browser of the owner's in.</summary>
    Outcome<SignedIn> SignIn(string password, string device, string from);

    /// <summary>Sets another password, and signs the owner's other browsers out.</summary>
    /// <param name="device">The browser that stays signed in.</param>
    /// <param name="old">The password until now.</param>
    /// <param name="password">The one from now on.</param>
    /// <param name="from">Where the request came from.</param>
    Outcome<Done> ChangePassword(Guid device, string old, string password, string from);

    /// <summary>Opens the way for one browser: it is paired by the code, once, within five minutes.</summary>
    Outcome<PairingOffer> OfferPairing(AccessRole role, string name);

    /// <summary>Pairs a browser. A wrong code is refused; after five, every open code ends.</summary>
    Outcome<SignedIn> Pair(string code, string from);

    /// <summary>Signs a device out, at once.</summary>
    Outcome<Done> SignOut(Guid device);

    /// <summary>Forgets the owner's account and signs the owner's browsers out, for a lost password: the code on the console
    /// makes the account again. Tablets stay paired.</summary>
    Outcome<Done> ForgetOwner();
}

/// <summary>What an owner enters.</summary>
/// <param name="Name">The owner's name.</param>
/// <param name="Password">Ten to 200 characters of any kind.</param>
public sealed record OwnerEntry(string Name, string Password);
