using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Access;
using ShopPlanner.Services.Common;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Hosting;
using ShopPlanner.Web.Security;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Access;

/// <summary>
/// What the forms of sign-in and pairing do. The Origin header says that only our own pages send them (<see cref="OriginGate"/>);
/// which of them a device may send, <see cref="AccessRules"/> says.
/// </summary>
internal static class AccessEndpoints
{
    private const int MostBytes = 16 * 1024;

    /// <summary>Maps the addresses.</summary>
    public static void MapAccess(this IEndpointRouteBuilder routes)
    {
        var forms = routes
            .MapGroup("")
            .DisableAntiforgery()
            .WithMetadata(new Microsoft.AspNetCore.Mvc.RequestSizeLimitAttribute(MostBytes));
        forms.MapPost(AccessLinks.Owner + "/account", BecomeOwnerAsync);
        forms.MapPost(AccessLinks.Owner + "/password", ChangePasswordAsync);
        forms.MapPost(AccessLinks.SignIn + "/password", SignInAsync);
        forms.MapPost(AccessLinks.SignOut, SignOut);
        forms.MapPost(AccessLinks.Pair + "/code", PairAsync);
        forms.MapPost(AccessLinks.Page + "/pair", OfferAsync);
        forms.MapPost(AccessLinks.Page + "/out", SignOtherOutAsync);
    }

    private static async Task<IResult> BecomeOwnerAsync(HttpContext context, IAccessService access)
    {
        await ReadAsync(context);
        var (code, name) = (AccessForm.Text(context, "Code"), AccessForm.Text(context, "Name"));
        var outcome = access.BecomeOwner(
            code,
            new OwnerEntry(name, AccessForm.Text(context, "Password")),
            DeviceName.Of(context),
            Caller.From(context)
        );
        return outcome.Ok
            ? Enter(context, outcome.Value, AccessLinks.Page)
            : AccessForm.Answer<OwnerForm>(
                context,
                Status(outcome.Kind),
                "Make the owner's account",
                (nameof(OwnerForm.Faults), outcome.Faults),
                (nameof(OwnerForm.Code), code),
                (nameof(OwnerForm.Name), name)
            );
    }

    private static async Task<IResult> ChangePasswordAsync(HttpContext context, IAccessService access)
    {
        if (Caller.Of(context) is not { Role: AccessRole.Owner } device)
            return TypedResults.StatusCode(StatusCodes.Status403Forbidden);
        await ReadAsync(context);
        var outcome = access.ChangePassword(
            device.Id,
            AccessForm.Text(context, "Old"),
            AccessForm.Text(context, "Password"),
            Caller.From(context)
        );
        return outcome.Ok
            ? new SeeOther(AccessLinks.Page)
            : AccessForm.Answer<PasswordForm>(
                context,
                Status(outcome.Kind),
                "Change the password",
                (nameof(PasswordForm.Faults), outcome.Faults)
            );
    }

    private static async Task<IResult> SignInAsync(HttpContext context, IAccessService access)
    {
        await ReadAsync(context);
        var to = AccessForm.Text(context, "To");
        var outcome = access.SignIn(AccessForm.Text(context, "Password"), DeviceName.Of(context), Caller.From(context));
        return outcome.Ok
            ? Enter(context, outcome.Value, Own(to))
            : AccessForm.Answer<SignInForm>(
                context,
                Status(outcome.Kind),
                "Sign in",
                (nameof(SignInForm.Faults), outcome.Faults),
                (nameof(SignInForm.To), to)
            );
    }

    private static SeeOther SignOut(HttpContext context, IAccessService access)
    {
        if (Caller.Of(context) is { } device)
            access.SignOut(device.Id);
        DeviceCookie.Take(context);
        return new SeeOther(AccessLinks.SignIn);
    }

    private static async Task<IResult> PairAsync(HttpContext context, IAccessService access)
    {
        await ReadAsync(context);
        var outcome = access.Pair(AccessForm.Text(context, "Code"), Caller.From(context));
        return outcome.Ok
            ? Enter(context, outcome.Value, AccessRules.Home(outcome.Value.Device.Role))
            : AccessForm.Answer<PairForm>(
                context,
                Status(outcome.Kind),
                "Pair this device",
                (nameof(PairForm.Faults), outcome.Faults)
            );
    }

    private static async Task<IResult> OfferAsync(HttpContext context, IAccessService access, LanAddresses lan)
    {
        await ReadAsync(context);
        var role = AccessForm.Text(context, "Role") == nameof(AccessRole.Household) ? AccessRole.Household : AccessRole.Bench;
        var outcome = access.OfferPairing(role, AccessForm.Text(context, "Name"));
        if (!outcome.Ok)
            return Refuse(context, outcome.Kind, outcome.Faults);
        var address = OwnAddress.For(context, lan);
        return AccessForm.Answer<PairingOffered>(
            context,
            StatusCodes.Status200OK,
            "Pair a device",
            (nameof(PairingOffered.Offer), outcome.Value),
            (nameof(PairingOffered.Address), address + AccessLinks.Pair),
            (nameof(PairingOffered.IsHere), new Uri(address).IsLoopback)
        );
    }

    private static async Task<IResult> SignOtherOutAsync(HttpContext context, IAccessService access)
    {
        await ReadAsync(context);
        var outcome = access.SignOut(Guid.TryParse(AccessForm.Text(context, "Device"), out var id) ? id : Guid.Empty);
        // Signed out already, here or elsewhere: that is what was asked for.
        return outcome.Kind is OutcomeKind.Ok or OutcomeKind.Missing
            ? new SeeOther(AccessLinks.Page)
            : Refuse(context, outcome.Kind, outcome.Faults);
    }

    /// <summary>Says what was not done, with the way back.</summary>
    internal static IResult Refuse(
        HttpContext context,
        OutcomeKind kind,
        System.Collections.Immutable.ImmutableArray<Fault> faults
    ) => AccessForm.Answer<NotDone>(context, Status(kind), "Not done", (nameof(NotDone.Faults), faults));

    /// <summary>Reads the form; what is no form holds no field.</summary>
    internal static async Task ReadAsync(HttpContext context)
    {
        if (context.Request.HasFormContentType)
            await context.Request.ReadFormAsync(context.RequestAborted);
    }

    private static SeeOther Enter(HttpContext context, SignedIn signed, string to)
    {
        DeviceCookie.Give(context, signed.Token);
        return new SeeOther(to);
    }

    // Only to pages of this program: "//elsewhere" is an address of another.
    private static string Own(string to) =>
        to.Length > 1 && to[0] == '/' && to[1] is not ('/' or '\\') && Uri.IsWellFormedUriString(to, UriKind.Relative)
            ? to
            : Links.Home;

    private static int Status(OutcomeKind kind) =>
        kind switch
        {
            OutcomeKind.Conflict => StatusCodes.Status409Conflict,
            OutcomeKind.Missing => StatusCodes.Status404NotFound,
            _ => StatusCodes.Status422UnprocessableEntity,
        };
}
