using System.CommandLine;
using System.Globalization;
using ShopPlanner.Services.Certificates;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Cli.Certificates;

/// <summary><c>certificate [--data DIR] [--host NAME …] [--new-authority]</c>: makes or renews the certificate that
/// the web program serves https with.</summary>
internal static class CertificateCommand
{
    private static readonly Option<string?> Data = new("--data")
    {
        Description = "The shop's data folder. Default: a folder in your local application data.",
        HelpName = "DIR",
    };

    private static readonly Option<string[]> Host = new("--host")
    {
        Description = "Another name or address that the shop is opened by. Can be repeated.",
        HelpName = "NAME",
    };

    private static readonly Option<bool> NewAuthority = new("--new-authority")
    {
        Description = "Makes another authority where there is one. Every tablet has to trust it again.",
    };

    public static Command Create()
    {
        var command = new Command(
            "certificate",
            "Makes a certificate authority of your own and a certificate for this computer's names and addresses, for "
                + "'ShopPlanner.Web --https PORT'. Run it again to renew the certificate. Exit status 0: done; 2: a name is "
                + "none, or the files "
                + "can't be written."
        )
        {
            Data,
            Host,
            NewAuthority,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(Data) is { Length: > 0 } given ? given : ShopFolder.Default(demo: false),
                parsed.GetValue(Host) ?? [],
                parsed.GetValue(NewAuthority)
            )
        );
        return command;
    }

    private static int Run(string folder, IReadOnlyList<string> hosts, bool isNewAuthority)
    {
        if (hosts.FirstOrDefault(name => Uri.CheckHostName(name) == UriHostNameType.Unknown) is { } odd)
            throw new Complaint(
                $"--host: '{odd}' is not a name or address: write it without https:// and port, like workshop.example"
            );
        try
        {
            var made = ShopCertificates.Make(folder, hosts, isNewAuthority, TimeProvider.System.GetUtcNow());
            Console.Out.WriteLine($"Certificate for {string.Join(", ", made.Names)}");
            Console.Out.WriteLine($"It ends on {Day(made.ServerUntil)}, the authority on {Day(made.AuthorityUntil)}.");
            Console.Out.WriteLine($"Authority, to be trusted on each tablet: {made.AuthorityFile}");
            Console.Out.WriteLine($"Its SHA-256 fingerprint: {made.Fingerprint}");
            Console.Out.WriteLine(
                "Start the program with --https 5443, open the bench and follow 'Open the bench without a network'."
            );
            return ExitStatus.Done;
        }
        catch (ShopStartException problem)
        {
            throw new Complaint(problem.Message);
        }
    }

    private static string Day(DateTimeOffset time) => time.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
