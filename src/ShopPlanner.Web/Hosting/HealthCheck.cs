namespace ShopPlanner.Web.Hosting;

/// <summary>Asks a program that runs already whether it answers. It serves where there is no shell to ask from.</summary>
internal static class HealthCheck
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    /// <summary>Returns 0 when the first page is answered; otherwise 1, after one line.</summary>
    public static async Task<int> AskAsync(int port)
    {
        // A container need not know the name localhost.
        var address = $"http://127.0.0.1:{port}/";
        try
        {
            using var client = new HttpClient { Timeout = Patience };
            using var answer = await client.GetAsync(new Uri(address));
            return answer.IsSuccessStatusCode ? 0 : Say(address, $"answers {(int)answer.StatusCode}");
        }
        catch (HttpRequestException problem)
        {
            return Say(address, $"does not answer: {problem.Message}");
        }
        catch (TaskCanceledException)
        {
            return Say(address, $"does not answer within {Patience.TotalSeconds} seconds");
        }
    }

    private static int Say(string address, string what)
    {
        Console.Error.WriteLine($"{address} {what}");
        return 1;
    }
}
