using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopPlanner.Services.Storage.Migrations
{
    /// <inheritdoc />
    public partial class WrongCuts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<Guid>(name: "WrongCutId", table: "Finishes", type: "TEXT", nullable: true);

            migrationBuilder.CreateTable(
                name: "LeftOut",
                columns: table => new
                {
                    FinishId = table.Column<Guid>(type: "TEXT", nullable: false),
                    RowId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Pieces = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LeftOut", x => new { x.FinishId, x.RowId });
                    table.ForeignKey(
                        name: "FK_LeftOut_Finishes_FinishId",
                        column: x => x.FinishId,
                        principalTable: "Finishes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "WrongCuts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Layout = table.Column<int>(type: "INTEGER", nullable: false),
                    Copy = table.Column<int>(type: "INTEGER", nullable: false),
                    Cut = table.Column<int>(type: "INTEGER", nullable: false),
                    Reason = table.Column<int>(type: "INTEGER", nullable: false),
                    IsTickedByIt = table.Column<bool>(type: "INTEGER", nullable: false),
                    LastPlan = table.Column<long>(type: "INTEGER", nullable: false),
                    RestPlanId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Standing = table.Column<bool>(type: "INTEGER", nullable: false),
                    WhenUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WrongCuts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_WrongCuts_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_WrongCuts_Plans_RestPlanId",
                        column: x => x.RestPlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "WrongPieces",
                columns: table => new
                {
                    WrongCutId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Piece = table.Column<int>(type: "INTEGER", nullable: false),
                    RowId = table.Column<Guid>(type: "TEXT", nullable: false),
                    IsPractice = table.Column<bool>(type: "INTEGER", nullable: false),
                    LeftPieceId = table.Column<Guid>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WrongPieces", x => new { x.WrongCutId, x.Piece });
                    table.ForeignKey(
                        name: "FK_WrongPieces_Pieces_LeftPieceId",
                        column: x => x.LeftPieceId,
                        principalTable: "Pieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_WrongPieces_WrongCuts_WrongCutId",
                        column: x => x.WrongCutId,
                        principalTable: "WrongCuts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateIndex(name: "IX_Finishes_WrongCutId", table: "Finishes", column: "WrongCutId");

            migrationBuilder.CreateIndex(name: "IX_LeftOut_PlanId", table: "LeftOut", column: "PlanId");

            migrationBuilder.CreateIndex(name: "IX_WrongCuts_PlanId", table: "WrongCuts", column: "PlanId");

            migrationBuilder.CreateIndex(name: "IX_WrongCuts_RestPlanId", table: "WrongCuts", column: "RestPlanId");

            migrationBuilder.CreateIndex(name: "IX_WrongPieces_LeftPieceId", table: "WrongPieces", column: "LeftPieceId");

            migrationBuilder.CreateIndex(name: "IX_WrongPieces_RowId", table: "WrongPieces", column: "RowId");

            migrationBuilder.AddForeignKey(
                name: "FK_Finishes_WrongCuts_WrongCutId",
                table: "Finishes",
                column: "WrongCutId",
                principalTable: "WrongCuts",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict
            );
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(name: "FK_Finishes_WrongCuts_WrongCutId", table: "Finishes");

            migrationBuilder.DropTable(name: "LeftOut");

            migrationBuilder.DropTable(name: "WrongPieces");

            migrationBuilder.DropTable(name: "WrongCuts");

            migrationBuilder.DropIndex(name: "IX_Finishes_WrongCutId", table: "Finishes");

            migrationBuilder.DropColumn(name: "WrongCutId", table: "Finishes");
        }
    }
}
