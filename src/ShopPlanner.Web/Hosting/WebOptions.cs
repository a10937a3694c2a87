using System.CommandLine;
using System.CommandLine.Parsing;
using System.Net;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Web.Hosting;

/// <summary>What reading the command line gave: settings, or the status to end with.</summary>
/// <param name="Settings">Null when there is nothing to run: help was asked for, or something is wrong.</param>
/// <param name="ExitCode">0 after help, 2 when something is wrong.</param>
internal sealed record WebOptionsReading(WebSettings? Settings, int ExitCode);

/// <summary>Reads the command line. Everything wrong is reported at once, a line for each.</summary>
internal static class WebOptions
{
    private static readonly Option<string?> Data = new("--data")
    {
        HelpName = "DIR",
        Description = "Folder for the shop's data. Default: a folder in your local application data.",
    };

    private static readonly Option<bool> Demo = new("--demo")
    {
        Description = "Start with made-up projects, stores and stock, in a folder of their own unless --data names an empty one.",
    };

    private static readonly Option<int> Port = new("--port")
    {
        HelpName = "N",
        Description = "Port to listen on; 0 takes any free one.",
        DefaultValueFactory = _ => WebSettings.DefaultPort,
    };

    private static readonly Option<string[]> Urls = new("--urls")
    {
        HelpName = "URL",
        Description = "Addresses to listen on instead of --port, separated by spaces or ';'.",
    };

    private static readonly Option<int?> Https = new("--https")
    {
        HelpName = "PORT",
        Description =
            "Listen with https on this port besides, with the certificate of 'shop-planner certificate', so that the "
            + "bench opens on a tablet without a network.",
    };

    private static readonly Option<bool> OnlyThisComputer = new("--only-this-computer")
    {
        Description = "Let no other device in, not even your tablet.",
    };

    private static readonly Option<string[]> Hosts = new("--host")
    {
        HelpName = "NAME",
        Description = "More names or addresses to open the program by, separated by spaces. Can be repeated.",
    };

    private static readonly Option<string?> Backups = new("--backups")
    {
        HelpName = "DIR",
        Description = "Another folder, on another disk or a share, that every backup is copied to. Default: as chosen in Setup.",
    };

    private static readonly Option<string?> Database = new("--database")
    {
        HelpName = "CONNECTION",
        Description =
            "A database of a PostgreSQL server that keeps the shop instead of a file in the data folder, like "
            + "Host=SERVER;Database=NAME;Username=USER;Password=SECRET. Default: the environment's SHOP_PLANNER_DATABASE, "
            + "where no other user of the computer reads the password.",
    };

    private static readonly Option<string[]> Proxies = new("--proxy")
    {
        HelpName = "ADDRESS",
        Description =
            "Address of a reverse proxy in front of the program: it is believed when it says who sends a request and whether "
            + "by https. Can be repeated.",
    };

    private static readonly Option<bool> ForgetOwner = new("--forget-owner")
    {
        Description = "Forget the owner's password, and print the code to make the owner's account again. Tablets stay paired.",
    };

    private static readonly Option<bool> Health = new("--health")
    {
        Description = "Check that the program on --port answers, then stop. Exit status 0: it does.",
    };

    /// <summary>Reads; writes help to standard output and faults to standard error.</summary>
    public static WebOptionsReading Read(IReadOnlyList<string> args)
    {
        WebSettings? settings = null;
        var command = Command();
        command.SetAction(result => settings = Settle(result));
        var parsed = command.Parse(args);
        if (parsed.Errors.Count > 0)
            return Complain(parsed.Errors);
        var status = parsed.Invoke();
        return new(settings, status);
    }

    private static RootCommand Command()
    {
        Port.Validators.Clear();
        Https.Validators.Clear();
        Urls.Validators.Clear();
        Hosts.Validators.Clear();
        Proxies.Validators.Clear();
        Port.Validators.Add(CheckPort);
        Https.Validators.Add(CheckPort);
        Urls.Validators.Add(CheckUrls);
        Hosts.Validators.Add(CheckHosts);
        Proxies.Validators.Add(CheckProxies);
        var command = new RootCommand(
            "Shop Planner: what to buy and how to cut it, in your browser and on the tablet at the saw."
        )
        {
            Data,
            Demo,
            Port,
            Urls,
            Https,
            OnlyThisComputer,
            Hosts,
            Backups,
            Database,
            Proxies,
            ForgetOwner,
            Health,
        };
        command.Validators.Clear();
        command.Validators.Add(result =>
        {
            if (result.GetResult(Urls) is { Implicit: false } && result.GetResult(Https) is { Implicit: false })
                result.AddError("--https: goes with --port, not with --urls: leave one of the two out");
        });
        return command;
    }

    private static WebSettings Settle(ParseResult result)
    {
        var demo = result.GetValue(Demo);
        var folder = result.GetValue(Data) is { Length: > 0 } given ? given : ShopFolder.Default(demo);
        return new(
            Path.GetFullPath(folder),
            demo,
            result.GetValue(Port),
            [.. Split(result.GetValue(Urls))],
            result.GetValue(OnlyThisComputer),
            [.. Split(result.GetValue(Hosts))],
            result.GetValue(Health),
            result.GetValue(Https),
            result.GetValue(Backups) is { Length: > 0 } second ? Path.GetFullPath(second) : null
        )
        {
            Proxies = [.. Split(result.GetValue(Proxies)).Select(IPAddress.Parse)],
            ForgetsOwner = result.GetValue(ForgetOwner),
            Database = Server(result.GetValue(Database), demo, ShopFolder.Server(null)),
        };
    }

    // The demo is never put where the environment says that a real shop is.
    internal static string? Server(string? named, bool demo, string? around) =>
        named is { Length: > 0 } ? named
        : demo ? null
        : around;

    private static void CheckPort(OptionResult result)
    {
        if (result.Tokens is [var token] && int.TryParse(token.Value, out var port) && port is < 0 or > 65_535)
            result.AddError($"{result.Option.Name}: '{token.Value}' is not a port: write a number from 0 to 65535");
    }

    private static void CheckUrls(OptionResult result)
    {
        foreach (var url in Split(result.Tokens.Select(token => token.Value)))
            if (!IsAddress(url))
                result.AddError($"--urls: '{url}' is not an address: write it like http://0.0.0.0:5080");
            else if (Unusable(new Uri(Spelled(url))) is { } why)
                result.AddError($"--urls: '{url}' {why}");
    }

    // The web server listens on every address when it is given a name that it does not know.
    private static string? Unusable(Uri url) =>
        url switch
        {
            { AbsolutePath: not "/" } => "has a path: write only an address and a port, like http://0.0.0.0:5080",
            { HostNameType: UriHostNameType.Dns, IsLoopback: false } =>
                $"has a name: write an address of this computer, or '*' for all, and --host {url.Host} for the name",
            { IsLoopback: true, HostNameType: UriHostNameType.Dns, Port: 0 } => "asks for a free port: write 127.0.0.1 for that",
            _ => null,
        };

    private static void CheckHosts(OptionResult result)
    {
        foreach (var name in Split(result.Tokens.Select(token => token.Value)))
            if (Uri.CheckHostName(name) == UriHostNameType.Unknown)
                result.AddError(
                    $"--host: '{name}' is not a name or address: write it without http:// and port, like workshop.example"
                );
    }

    private static void CheckProxies(OptionResult result)
    {
        foreach (var text in Split(result.Tokens.Select(token => token.Value)))
            if (!IPAddress.TryParse(text, out _))
                result.AddError($"--proxy: '{text}' is not an address: write the proxy's own, like 127.0.0.1 or 192.168.1.5");
    }

    /// <summary>An address with '*' and '+', which stand for every address of this computer, written out.</summary>
    internal static string Spelled(string url) =>
        url.Replace("//*", "//0.0.0.0", StringComparison.Ordinal).Replace("//+", "//0.0.0.0", StringComparison.Ordinal);

    private static bool IsAddress(string url) =>
        Uri.TryCreate(Spelled(url), UriKind.Absolute, out var uri)
        && (uri.Scheme == Uri.UriSchemeHttp || uri.Scheme == Uri.UriSchemeHttps);

    private static IEnumerable<string> Split(IEnumerable<string>? values) =>
        (values ?? []).SelectMany(value =>
            value.Split([';', ',', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        );

    private static WebOptionsReading Complain(IReadOnlyList<ParseError> errors)
    {
        foreach (var error in errors.Select(error => error.Message).Distinct())
            Console.Error.WriteLine(error);
        Console.Error.WriteLine("Try --help for the options.");
        return new(null, 2);
    }
}
