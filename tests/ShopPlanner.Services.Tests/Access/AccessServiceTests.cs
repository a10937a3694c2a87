using System.Buffers.Binary;
using System.Text.RegularExpressions;
using ShopPlanner.Services.Access;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Access;

/// <summary>Who may open the shop.</summary>
public sealed partial class AccessServiceTests
{
    private static readonly OwnerEntry Ana = new("Ana", "a plane in the drawer");

    [Fact]
    public async Task Only_the_code_of_the_console_makes_an_owner_and_only_once()
    {
        await using var shop = await TestShop.OpenAsync();
        var access = shop.Get<IAccessService>();
        var code = access.OwnerCode!;
        Assert.Matches(HexCode(), code);
        Assert.Equal(OutcomeKind.Faulty, access.BecomeOwner("0" + code[1..] + "0", Ana, "Desk", "a").Kind);
        Assert.False(access.HasOwner);
        var signed = access.BecomeOwner(code, Ana, "Desk", "a");
        Assert.True(signed.Ok);
        Assert.Equal(("Ana", (string?)null), (access.Get().Owner, access.OwnerCode));
        Assert.Equal(OutcomeKind.Conflict, access.BecomeOwner(code, Ana with { Name = "Ben" }, "Other", "b").Kind);
        Assert.Equal(AccessRole.Owner, access.Find(signed.Value.Token)!.Role);
        Assert.Equal("Ana", access.Get().Owner);
    }

    [Fact]
    public async Task Of_fifty_who_claim_a_shop_at_once_one_becomes_its_owner()
    {
        await using var shop = await TestShop.OpenAsync();
        var access = shop.Get<IAccessService>();
        var code = access.OwnerCode!;
        var claims = await Task.WhenAll(
            Enumerable
                .Range(0, 50)
                .Select(n => Task.Run(() => access.BecomeOwner(code, Ana, $"Device {n}", $"{n}"), TestShop.Cancel))
        );
        Assert.Single(claims, claim => claim.Ok);
        Assert.Equal(49, claims.Count(claim => claim.Kind == OutcomeKind.Conflict));
        Assert.Single(access.Get().Devices);
    }

    [Theory]
    [InlineData("", "a plane in the drawer", "Name")]
    [InlineData("Ana", "too short", "Password")]
    [InlineData("Ana", "ababababababab", "Password")]
    [InlineData("Ana", "anaplanes and ana saws", "Password")]
    public async Task Weak_passwords_and_no_name_are_refused(string name, string password, string field)
    {
        await using var shop = await TestShop.OpenAsync();
        var access = shop.Get<IAccessService>();
        var outcome = access.BecomeOwner(access.OwnerCode!, new(name, password), "Desk", "a");
        Assert.Equal([field], outcome.Faults.Select(fault => fault.Field));
        Assert.False(access.HasOwner);
    }

    // OWASP Application Security Verification Standard 5.0.0, appendix C: PBKDF2 with HMAC-SHA-512 and 210,000 rounds or more.
    // The layout of the hash is that of ASP.NET Core Identity, version 3: marker, function, rounds, length of the salt.
    [Fact]
    public void A_password_is_kept_as_its_slow_hash()
    {
        var kept = Convert.FromBase64String(Passwords.Kept(Ana.Password));
        Assert.Equal(1, kept[0]);
        Assert.Equal(2u, BinaryPrimitives.ReadUInt32BigEndian(kept.AsSpan(1)));
        Assert.Equal(210_000u, BinaryPrimitives.ReadUInt32BigEndian(kept.AsSpan(5)));
        Assert.True(BinaryPrimitives.ReadUInt32BigEndian(kept.AsSpan(9)) >= 16);
        Assert.NotEqual(kept, Convert.FromBase64String(Passwords.Kept(Ana.Password)));
    }

    [Fact]
    public async Task Whoever_guesses_waits_longer_and_longer_and_others_do_not()
    {
        await using var shop = await OwnedAsync();
        var access = shop.Get<IAccessService>();
        for (var n = 0; n < 5; n++)
            Assert.Equal("Password", Assert.Single(access.SignIn("guess", "Thief", "t").Faults).Field);
        var waiting = Assert.Single(access.SignIn(Ana.Password, "Thief", "t").Faults);
        Assert.StartsWith("Too many tries. Wait 2 seconds", waiting.Message, StringComparison.Ordinal);
        Assert.True(access.SignIn(Ana.Password, "Desk", "elsewhere").Ok);
        shop.Clock.Advance(TimeSpan.FromSeconds(2.1));
        Assert.Equal("Password", Assert.Single(access.SignIn("guess", "Thief", "t").Faults).Field);
        Assert.StartsWith(
            "Too many tries. Wait 4 seconds",
            Assert.Single(access.SignIn("guess", "Thief", "t").Faults).Message,
            StringComparison.Ordinal
        );
        shop.Clock.Advance(TimeSpan.FromMinutes(1));
        Assert.True(access.SignIn(Ana.Password, "Desk", "t").Ok);
    }

    [Fact]
    public async Task A_code_pairs_one_device_within_five_minutes()
    {
        await using var shop = await OwnedAsync();
        var access = shop.Get<IAccessService>();
        var offer = access.OfferPairing(AccessRole.Bench, " Shop  tablet ").Value!;
        Assert.Matches(TypedCode(), offer.Code);
        var typed = offer.Code.ToLowerInvariant().Replace("-", " ", StringComparison.Ordinal);
        var paired = access.Pair(typed, "tablet").Value!;
        Assert.Equal(("Shop tablet", AccessRole.Bench), (paired.Device.Name, paired.Device.Role));
        Assert.Equal(paired.Device.Id, access.Find(paired.Token)!.Id);
        Assert.Equal(OutcomeKind.Faulty, access.Pair(offer.Code, "second").Kind);
        var late = access.OfferPairing(AccessRole.Household, "Phone").Value!;
        shop.Clock.Advance(TimeSpan.FromMinutes(5));
        Assert.Equal(OutcomeKind.Faulty, access.Pair(late.Code, "phone").Kind);
    }

    [Fact]
    public async Task Five_wrong_codes_end_every_open_one()
    {
        await using var shop = await OwnedAsync();
        var access = shop.Get<IAccessService>();
        var offer = access.OfferPairing(AccessRole.Bench, "Shop tablet").Value!;
        for (var n = 0; n < 5; n++)
            Assert.Equal(OutcomeKind.Faulty, access.Pair("00000-00000", $"{n}").Kind);
        Assert.Equal(OutcomeKind.Faulty, access.Pair(offer.Code, "tablet").Kind);
        Assert.True(access.Pair(access.OfferPairing(AccessRole.Bench, "Shop tablet").Value!.Code, "tablet").Ok);
    }

    [Fact]
    public async Task A_device_is_signed_out_alone_and_everybody_hears_of_it()
    {
        await using var shop = await OwnedAsync();
        var access = shop.Get<IAccessService>();
        var tablet = Paired(access, AccessRole.Bench);
        var phone = Paired(access, AccessRole.Household);
        var heard = 0;
        access.Changed += () => heard++;
        Assert.True(access.SignOut(tablet.Device.Id).Ok);
        Assert.Equal(1, heard);
        Assert.Null(access.Find(tablet.Token));
        Assert.False(access.IsIn(tablet.Device.Id));
        Assert.NotNull(access.Find(phone.Token));
        Assert.Equal(OutcomeKind.Missing, access.SignOut(tablet.Device.Id).Kind);
    }

    [Fact]
    public async Task Another_password_signs_the_owners_other_browsers_out_and_no_tablet()
    {
        await using var shop = await OwnedAsync();
        var access = shop.Get<IAccessService>();
        var (here, there, tablet) = (SignedIn(access), SignedIn(access), Paired(access, AccessRole.Bench));
        Assert.Equal(OutcomeKind.Faulty, access.ChangePassword(here.Device.Id, "wrong", "another plane, sharper", "a").Kind);
        Assert.NotNull(access.Find(there.Token));
        Assert.True(access.ChangePassword(here.Device.Id, Ana.Password, "another plane, sharper", "a").Ok);
        Assert.NotNull(access.Find(here.Token));
        Assert.Null(access.Find(there.Token));
        Assert.NotNull(access.Find(tablet.Token));
        Assert.Equal(OutcomeKind.Faulty, access.SignIn(Ana.Password, "Desk", "b").Kind);
        Assert.True(access.SignIn("another plane, sharper", "Desk", "b").Ok);
    }

    [Fact]
    public async Task A_forgotten_owner_is_made_anew_and_tablets_stay()
    {
        await using var shop = await OwnedAsync();
        var access = shop.Get<IAccessService>();
        var (desk, tablet) = (SignedIn(access), Paired(access, AccessRole.Bench));
        Assert.True(access.ForgetOwner().Ok);
        Assert.Null(access.Find(desk.Token));
        Assert.NotNull(access.Find(tablet.Token));
        Assert.True(access.BecomeOwner(access.OwnerCode!, new("Ben", "another plane, sharper"), "Desk", "a").Ok);
    }

    [Fact]
    public async Task It_outlives_a_restart_and_no_secret_is_in_the_file()
    {
        var folder = TestShop.NewFolder();
        SignedIn tablet;
        await using (var shop = await OwnedAsync(folder))
            tablet = Paired(shop.Get<IAccessService>(), AccessRole.Bench);
        var file = Path.Combine(folder, "access.json");
        var text = await File.ReadAllTextAsync(file, TestShop.Cancel);
        Assert.DoesNotContain(tablet.Token, text, StringComparison.Ordinal);
        Assert.DoesNotContain(Ana.Password, text, StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
        await using (var again = await TestShop.OpenAsync(folder: folder))
        {
            Assert.Equal("Ana", again.Get<IAccessService>().Get().Owner);
            Assert.Equal(tablet.Device.Id, again.Get<IAccessService>().Find(tablet.Token)!.Id);
        }

        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("{")]
    [InlineData("{\"Format\":2,\"Owner\":null,\"Devices\":[],\"Shares\":[]}")]
    [InlineData("{\"Format\":1}")]
    public async Task A_file_that_cannot_be_read_opens_the_shop_to_nobody(string text)
    {
        await using var shop = await TestShop.OpenAsync();
        await File.WriteAllTextAsync(Path.Combine(shop.Folder, "access.json"), text, TestShop.Cancel);
        var problem = Assert.Throws<ShopStartException>(() => shop.Get<IAccessService>().HasOwner);
        Assert.Contains("access.json cannot be read", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_written_changes_nothing()
    {
        await using var shop = await OwnedAsync();
        var access = shop.Get<IAccessService>();
        var tablet = Paired(access, AccessRole.Bench);
        // A folder stands where the file is written first.
        Directory.CreateDirectory(Path.Combine(shop.Folder, "access.json.part", "full"));
        var outcome = access.SignOut(tablet.Device.Id);
        Assert.StartsWith("Nothing was changed", Assert.Single(outcome.Faults).Message, StringComparison.Ordinal);
        Assert.NotNull(access.Find(tablet.Token));
    }

    private static async Task<TestShop> OwnedAsync(string? folder = null)
    {
        var shop = await TestShop.OpenAsync(folder: folder);
        var access = shop.Get<IAccessService>();
        Assert.True(access.BecomeOwner(access.OwnerCode!, Ana, "First desk", "first").Ok);
        return shop;
    }

    private static SignedIn SignedIn(IAccessService access) => access.SignIn(Ana.Password, "Desk", "desk").Value!;

    private static SignedIn Paired(IAccessService access, AccessRole role) =>
        access.Pair(access.OfferPairing(role, $"For {role}").Value!.Code, "tablet").Value!;

    [GeneratedRegex("^[0-9a-f]{32}$")]
    private static partial Regex HexCode();

    [GeneratedRegex("^[0-9A-HJKMNP-TV-Z]{5}-[0-9A-HJKMNP-TV-Z]{5}$")]
    private static partial Regex TypedCode();
}
