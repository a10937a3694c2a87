using Microsoft.AspNetCore.Components.Forms;

namespace ShopPlanner.Web.Tests.Shared;

/// <summary>A chosen file whose bytes come as the test wants them.</summary>
internal sealed class BrokenFile(string name, long size, Func<Stream> open) : IBrowserFile
{
    public string Name => name;

    public DateTimeOffset LastModified => default;

    public long Size => size;

    public string ContentType => "text/plain";

    public Stream OpenReadStream(long maxAllowedSize = 512_000, CancellationToken cancellationToken = default) => open();
}

/// <summary>Gives some bytes, then what the test wants: an error, or nothing for ever.</summary>
internal sealed class BrokenStream(int good, Exception? problem) : Stream
{
    private int left = good;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        if (left > 0)
        {
            var many = Math.Min(left, buffer.Length);
            buffer.Span[..many].Fill((byte)'a');
            left -= many;
            return many;
        }

        if (problem is not null)
            throw problem;
        await new TaskCompletionSource().Task;
        return 0;
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override void Flush() => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
