using System.Text.RegularExpressions;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Running;

namespace ShopPlanner.Services.Tests.Commands;

/// <summary>Whatever makes something makes it once, however often it is sent.</summary>
public sealed partial class MakingTests
{
    private const int Senders = 64;

    public static TheoryData<string> Methods => [.. MakingCases.All.Select(one => one.Method)];

    [Fact]
    public void Every_method_that_takes_a_command_id_is_tried_here() =>
        Assert.Equal(
            Services().Where(method => TakesId(method)).Select(Name).Order(StringComparer.Ordinal),
            MakingCases.All.Select(one => one.Method).Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Every_method_that_is_named_for_making_takes_a_command_id() =>
        Assert.Empty(Services().Where(method => Makes().IsMatch(method.Name) && !TakesId(method)).Select(Name));

    [Theory]
    [MemberData(nameof(Methods))]
    public async Task Sent_twice_it_is_done_once_and_answered_alike(string method)
    {
        await using var given = await PlannedShop.OpenAsync();
        var (send, id) = (await PrepareAsync(given, method), CommandId.New());
        var first = await send(given.Shop, id);
        Assert.True(first.Kind == OutcomeKind.Ok, first.Faults);
        var made = await CountAsync(given.Shop);
        Assert.Equal(first, await send(given.Shop, id));
        Assert.Equal(made, await CountAsync(given.Shop));
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public async Task Sent_by_many_at_once_it_is_done_once_and_answered_alike(string method)
    {
        await using var once = await PlannedShop.OpenAsync();
        Assert.Equal(OutcomeKind.Ok, (await (await PrepareAsync(once, method))(once.Shop, CommandId.New())).Kind);
        await using var given = await PlannedShop.OpenAsync();
        var (send, id) = (await PrepareAsync(given, method), CommandId.New());
        var answers = await Task.WhenAll(
            Enumerable.Range(0, Senders).Select(_ => Task.Run(() => send(given.Shop, id), TestShop.Cancel))
        );
        var answer = Assert.Single(answers.Distinct());
        Assert.True(answer.Kind == OutcomeKind.Ok, answer.Faults);
        Assert.Equal(await CountAsync(once.Shop), await CountAsync(given.Shop));
    }

    // The program ends after it has committed and before the answer arrives: the device sends again.
    [Theory]
    [MemberData(nameof(Methods))]
    public async Task Sent_again_after_a_restart_it_is_answered_with_what_was_made(string method)
    {
        var (folder, id) = (TestShop.NewFolder(), CommandId.New());
        SendCommand send;
        Answer lost;
        IReadOnlyDictionary<string, long> made;
        await using (var given = await PlannedShop.OpenAsync(folder))
        {
            send = await PrepareAsync(given, method);
            lost = await send(given.Shop, id);
            made = await CountAsync(given.Shop);
        }

        await using (var again = await TestShop.OpenAsync(folder: folder))
        {
            Assert.Equal(lost, await send(again, id));
            Assert.Equal(made, await CountAsync(again));
        }

        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public async Task An_id_that_asked_for_something_else_is_a_fault(string method)
    {
        await using var given = await PlannedShop.OpenAsync();
        var (send, id) = (await PrepareAsync(given, method), CommandId.New());
        Assert.True((await given.Shop.Projects.CreateAsync("Gate", Some.Inch, id, TestShop.Cancel)).Ok);
        var before = await CountAsync(given.Shop);
        var answer = await send(given.Shop, id);
        Assert.Equal(OutcomeKind.Faulty, answer.Kind);
        Assert.Contains("was used for another command", answer.Faults, StringComparison.Ordinal);
        Assert.Equal(before, await CountAsync(given.Shop));
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public async Task A_command_without_an_id_is_a_fault(string method)
    {
        await using var given = await PlannedShop.OpenAsync();
        var send = await PrepareAsync(given, method);
        var before = await CountAsync(given.Shop);
        var answer = await send(given.Shop, default);
        Assert.Equal(OutcomeKind.Faulty, answer.Kind);
        Assert.Contains("a command needs an id", answer.Faults, StringComparison.Ordinal);
        Assert.Equal(before, await CountAsync(given.Shop));
    }

    private static Task<SendCommand> PrepareAsync(PlannedShop given, string method) =>
        MakingCases.All.Single(one => one.Method == method).PrepareAsync(given);

    // Rows and backups, once nothing runs in the background any more.
    private static async Task<IReadOnlyDictionary<string, long>> CountAsync(TestShop shop)
    {
        const string Open = "SELECT COUNT(*) FROM PlanJobs WHERE State IN ({0}, {1})";
        var open = string.Format(null, Open, (int)PlanJobState.Waiting, (int)PlanJobState.Running);
        while (shop.Ask(open) != "0")
            await Task.Delay(5, TestShop.Cancel);
        var copies = Directory.GetFiles(Path.Combine(shop.Folder, "backups"), "*-by-hand.db").Length;
        return new Dictionary<string, long>(shop.CountRows()) { ["copies"] = copies };
    }

    private static IEnumerable<System.Reflection.MethodInfo> Services() =>
        typeof(CommandId).Assembly.GetExportedTypes().Where(type => type.IsInterface).SelectMany(type => type.GetMethods());

    private static bool TakesId(System.Reflection.MethodInfo method) =>
        method.GetParameters().Any(parameter => parameter.ParameterType == typeof(CommandId));

    private static string Name(System.Reflection.MethodInfo method) => $"{method.DeclaringType!.Name}.{method.Name}";

    [GeneratedRegex("^(Add|Begin|Copy|Create|Duplicate|Finish|Import|Keep|Make|Paste|PutBack|Start)")]
    private static partial Regex Makes();
}
