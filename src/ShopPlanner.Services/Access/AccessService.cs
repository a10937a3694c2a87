using System.Collections.Concurrent;
using System.Collections.Immutable;
using Microsoft.Extensions.Logging;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Access;

internal sealed class AccessService(AccessFile file, TimeProvider clock, ILogger<AccessService> log) : IAccessService
{
    private const int MostDevices = 100;

    private readonly string ownerCode = Secrets.Link();
    private readonly Pairings pairings = new(clock);
    private readonly TryLimits limits = new(clock);
    private readonly ConcurrentDictionary<Guid, DateTime> seen = new();

    public event Action? Changed;

    public bool HasOwner => file.Now.Owner is not null;

    public string? OwnerCode => HasOwner ? null : ownerCode;

    public AccessView Get()
    {
        var (now, kept) = (clock.GetUtcNow().UtcDateTime, file.Now);
        return new(
            kept.Owner?.Name,
            [.. kept.Devices.Select(View).OrderBy(one => one.Role).ThenBy(one => one.Name, StringComparer.CurrentCulture)],
            [.. kept.Shares.Where(one => one.EndsUtc > now).OrderBy(one => one.EndsUtc).Select(one => one.View())]
        );
    }

    public AccessDevice? Find(string token)
    {
        var secret = Secrets.Kept(token);
        if (file.Now.Devices.FirstOrDefault(one => one.Secret == secret) is not { } device)
            return null;
        seen[device.Id] = clock.GetUtcNow().UtcDateTime;
        return View(device);
    }

    public bool IsIn(Guid device) => file.Now.Devices.Any(one => one.Id == device);

    public Outcome<SignedIn> BecomeOwner(string code, OwnerEntry owner, string device, string from)
    {
        ArgumentNullException.ThrowIfNull(owner);
        if (limits.Begin(from) is { } wait)
            return Outcome.Faulty<SignedIn>(wait);
        if (!Secrets.AreSame(ownerCode, code.Trim().ToLowerInvariant()))
            return Outcome.Faulty<SignedIn>(
                new Fault("Code", "", "is not the one on the console: copy it from where Shop Planner was started")
            );
        limits.Succeed(from);
        var faults = Faults(TextRules.Name("Name", owner.Name), Passwords.Wrong(owner.Password, owner.Name));
        if (!faults.IsEmpty)
            return Outcome.Faulty<SignedIn>(faults);
        var kept = new KeptOwner(TextRules.Tidy(owner.Name), Passwords.Kept(owner.Password));
        return Change(
            document =>
                document.Owner is null
                    ? Add(document with { Owner = kept }, device, AccessRole.Owner)
                    : (document, Outcome.Conflict<SignedIn>(new Fault("", "", "This shop has an owner already: sign in"))),
            "The shop has an owner now"
        );
    }

    public Outcome<SignedIn> SignIn(string password, string device, string from)
    {
        if (CheckPassword(password, from) is { } fault)
            return Outcome.Faulty<SignedIn>(fault);
        return Change(document => Add(document, device, AccessRole.Owner), "The owner signed in");
    }

    public Outcome<Done> ChangePassword(Guid device, string old, string password, string from)
    {
        if (CheckPassword(old, from) is { } fault)
            return Outcome.Faulty<Done>(fault);
        if (Passwords.Wrong(password, file.Now.Owner?.Name ?? "") is { } wrong)
            return Outcome.Faulty<Done>(wrong.At("New password"));
        var kept = Passwords.Kept(password);
        return Change<Done>(
            document =>
                document.Owner is { } owner
                    ? (
                        Without(document, one => one.Role == AccessRole.Owner && one.Id != device) with
                        {
                            Owner = owner with { Password = kept },
                        },
                        Done.Value
                    )
                    : (document, Outcome.Missing<Done>("owner")),
            "The owner's password was changed, and the owner's other browsers were signed out"
        );
    }

    public Outcome<PairingOffer> OfferPairing(AccessRole role, string name)
    {
        if (TextRules.Name("Name", name) is { } fault)
            return Outcome.Faulty<PairingOffer>(fault);
        if (!HasOwner)
            return Outcome.Faulty<PairingOffer>(new Fault("", "", "Make the owner's account first"));
        return file.Now.Devices.Length >= MostDevices
            ? Outcome.Faulty<PairingOffer>(new Fault("", "", $"{MostDevices} devices are signed in: sign some out first"))
            : pairings.Offer(role, TextRules.Tidy(name));
    }

    public Outcome<SignedIn> Pair(string code, string from)
    {
        if (limits.Begin(from) is { } wait)
            return Outcome.Faulty<SignedIn>(wait);
        if (pairings.Take(code) is not { } offer)
            return Outcome.Faulty<SignedIn>(
                new Fault("Code", "", "is wrong, was used or has ended: ask the owner for a new one")
            );
        limits.Succeed(from);
        return Change(document => Add(document, offer.Name, offer.Role), $"A device was paired: {offer.Role}");
    }

    public Outcome<Done> SignOut(Guid device) =>
        Change<Done>(
            document =>
                document.Devices.Any(one => one.Id == device)
                    ? (Without(document, one => one.Id == device), Done.Value)
                    : (document, Outcome.Missing<Done>("device")),
            "A device was signed out"
        );

    public Outcome<Done> ForgetOwner() =>
        Change<Done>(
            document => (Without(document, one => one.Role == AccessRole.Owner) with { Owner = null }, Done.Value),
            "The owner's account was removed"
        );

    // The oldest of the owner's browsers makes way: nobody is to be shut out by forgotten ones.
    private (AccessDocument, Outcome<SignedIn>) Add(AccessDocument document, string name, AccessRole role)
    {
        var (token, now) = (Secrets.Token(), clock.GetUtcNow().UtcDateTime);
        var device = new KeptDevice(Guid.CreateVersion7(), name, role, Secrets.Kept(token), now);
        var devices = document.Devices;
        if (devices.Length >= MostDevices && devices.FirstOrDefault(one => one.Role == AccessRole.Owner) is { } oldest)
            devices = devices.Remove(oldest);
        return (document with { Devices = devices.Add(device) }, new SignedIn(View(device), token));
    }

    private static AccessDocument Without(AccessDocument document, Predicate<KeptDevice> which) =>
        document with
        {
            Devices = document.Devices.RemoveAll(which),
        };

    private Fault? CheckPassword(string password, string from)
    {
        if (file.Now.Owner is not { } owner)
            return new Fault("", "", "This shop has no owner yet");
        if (limits.Begin(from) is { } wait)
            return wait;
        if (!Passwords.IsRight(owner.Password, password))
            return new Fault("Password", "", "is wrong");
        limits.Succeed(from);
        return null;
    }

    private Outcome<T> Change<T>(Func<AccessDocument, (AccessDocument Kept, Outcome<T> Answer)> change, string done)
        where T : class
    {
        var outcome = file.Change(change);
        if (!outcome.Ok)
            return outcome;
        log.LogInformation("{What}", done);
        Changed?.Invoke();
        return outcome;
    }

    private AccessDevice View(KeptDevice device) =>
        new(device.Id, device.Name, device.Role, device.SinceUtc)
        {
            SeenUtc = seen.TryGetValue(device.Id, out var when) ? when : null,
        };

    private static ImmutableArray<Fault> Faults(params IEnumerable<Fault?> faults) => [.. faults.OfType<Fault>()];
}
