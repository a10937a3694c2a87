using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>
/// Stands between browser and program and breaks the line when asked to: open connections are cut, new ones refused.
/// </summary>
public sealed class DroppingProxy : IAsyncDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource stop = new();
    private readonly ConcurrentDictionary<TcpClient, byte> open = [];
    private readonly SemaphoreSlim refusals = new(0);
    private readonly Task running;
    private volatile bool isDown;

    public DroppingProxy(int port)
    {
        Target = port;
        listener.Start();
        running = AcceptAsync();
    }

    /// <summary>The program's port; another one after it was started again.</summary>
    public int Target { get; set; }

    public Uri Address => new($"http://localhost:{((IPEndPoint)listener.LocalEndpoint).Port}");

    public void Drop()
    {
        while (refusals.Wait(0)) { }
        isDown = true;
        foreach (var client in open.Keys)
            client.Close();
    }

    public void Restore() => isDown = false;

    /// <summary>Waits until so many connections were refused since the line was cut: that long the outage lasts.</summary>
    public async Task RefusedAsync(int connections, CancellationToken cancel)
    {
        for (var i = 0; i < connections; i++)
            await refusals.WaitAsync(cancel);
    }

    public async ValueTask DisposeAsync()
    {
        await stop.CancelAsync();
        listener.Stop();
        foreach (var client in open.Keys)
            client.Close();
        await running;
        stop.Dispose();
        refusals.Dispose();
    }

    private async Task AcceptAsync()
    {
        var pipes = new List<Task>();
        while (!stop.IsCancellationRequested)
        {
            TcpClient client;
            try
            {
                client = await listener.AcceptTcpClientAsync(stop.Token);
            }
            catch (Exception end) when (end is OperationCanceledException or SocketException or ObjectDisposedException)
            {
                break;
            }

            if (isDown)
            {
                client.Close();
                refusals.Release();
            }
            else
                pipes.Add(PipeAsync(client));
        }

        await Task.WhenAll(pipes);
    }

    private async Task PipeAsync(TcpClient client)
    {
        using var server = new TcpClient();
        open[client] = open[server] = 0;
        try
        {
            await server.ConnectAsync(IPAddress.Loopback, Target, stop.Token);
            await Task.WhenAny(
                client.GetStream().CopyToAsync(server.GetStream(), stop.Token),
                server.GetStream().CopyToAsync(client.GetStream(), stop.Token)
            );
        }
        catch (Exception cut)
            when (cut
                    is IOException
                        or SocketException
                        or ObjectDisposedException
                        or OperationCanceledException
                        or InvalidOperationException
            )
        {
            // A cut line is what this is for.
        }
        finally
        {
            open.TryRemove(client, out _);
            open.TryRemove(server, out _);
            client.Close();
        }
    }
}
